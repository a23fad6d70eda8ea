import { expect, test } from 'vitest';
import { TEST_JOB, testKeys, testWriter } from '../test-book.ts';
import { checkHead, headBytes, readHead } from './head.ts';

const writer = testWriter(1);
writer.write('note-written', { text: 'fog' });
const head = writer.head();
const codes = (outcome: ReturnType<typeof checkHead>) => (outcome.ok ? [] : outcome.notices.map(({ code }) => code));

test('checkHead() takes what the device signed, read from its bytes', () => {
  const read = readHead(headBytes(head));
  expect(read.ok && checkHead(read.value, writer.keys.publicKey).ok).toBe(true);
});
test('checkHead() refuses another place, hash, book or key', () => {
  const { publicKey } = writer.keys;
  expect(codes(checkHead({ ...head, sequence: 1 }, publicKey))).toEqual(['head-not-signed']);
  expect(codes(checkHead({ ...head, hash: '0'.repeat(64) as typeof head.hash }, publicKey))).toEqual(['head-not-signed']);
  expect(codes(checkHead({ ...head, job: TEST_JOB.replace('j-0', 'j-1') }, publicKey))).toEqual(['head-not-signed']);
  expect(codes(checkHead(head, testKeys(2).publicKey))).toEqual(['key-of-another-device']);
});
