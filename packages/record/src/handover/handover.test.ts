import { describe, expect, test } from 'vitest';
import { utf8 } from '../bytes/text.ts';
import { bytesSource } from '../container/read.ts';
import { noteKeyText, signCheckpoint } from '../merkle/checkpoint.ts';
import { EMPTY_FRONTIER, type Frontier, rootOf } from '../merkle/tree.ts';
import { TEST_JOB, testKeys, testWriter } from '../test-book.ts';
import { handoverBytes, TEST_LOG, testBook, testLog, testSource } from '../test-handover.ts';
import { type VerifyOptions, verifyHandover } from './verify.ts';

const book = testBook();
const source = testSource(book, { report: utf8('%PDF-1.7') });
const file = await handoverBytes(source);
const verify = (bytes: Uint8Array, options?: VerifyOptions) => verifyHandover(bytesSource(bytes), options);
const codeOf = async (bytes: Uint8Array, options?: VerifyOptions) => {
  const result = await verify(bytes, options);
  return result.ok ? 'verified' : result.fault.reason.code;
};
const at = (text: string, from = 0) => Buffer.from(file).indexOf(text, from);
const checkpointOf = (tail: Frontier, keys = TEST_LOG.keys) =>
  signCheckpoint({ job: TEST_JOB, size: tail.size, root: rootOf(tail) }, 'skerrow', keys);

describe('verifyHandover()', () => {
  test('verifies what writeHandover() wrote, with a copied phone, an unsigned end and a name that was erased', async () => {
    const result = await verify(file);
    if (!result.ok) throw new Error(`${result.fault.byte} ${result.fault.reason.code}`);
    expect(result.value).toMatchObject({ job: TEST_JOB, size: book.entries.length, attachments: 2, report: true });
    expect(result.value.missing).toHaveLength(4);
    expect(result.value.devices.filter(({ forked }) => forked)).toMatchObject([{ entries: 5, unsigned: 1 }]);
  });
  test('holds the file against a checkpoint seen elsewhere', async () => {
    const earlier = testLog({ ...book, entries: book.entries.slice(0, 20) }).tail;
    expect(await codeOf(file, { seen: checkpointOf(earlier) })).toBe('verified');
    const other = testLog({ ...book, entries: [...book.entries.slice(1, 20), book.entries[0]!] }).tail;
    expect(await codeOf(file, { seen: checkpointOf(other) })).toBe('log-differs-from-seen');
    expect(await codeOf(file, { seen: checkpointOf(earlier, testKeys(98)) })).toBe('note-not-signed');
    expect(await codeOf(file, { seen: checkpointOf(EMPTY_FRONTIER) })).toBe('verified');
  });
  test('refuses a whole file cut back to an older state only where a later checkpoint was seen', async () => {
    const older = testBook(1);
    const cut = await handoverBytes(testSource({ ...older, entries: older.entries.slice(0, 30), heads: older.heads.slice(0, 1) }));
    expect(await codeOf(cut)).toBe('verified');
    expect(await codeOf(cut, { seen: checkpointOf(testLog(book).tail) })).toBe('log-shorter-than-seen');
  });
  test('refuses a file that was made anew under another key, where the key is known', async () => {
    const forged = await handoverBytes(source, { name: 'skerrow', keys: testKeys(98) });
    const key = noteKeyText({ name: 'skerrow', publicKey: TEST_LOG.keys.publicKey });
    expect(await codeOf(forged)).toBe('verified');
    expect(await codeOf(forged, { key })).toBe('key-of-another-log');
    expect(await codeOf(file, { key })).toBe('verified');
  });
  test('refuses a key put in the place of a device’s, and a device without a key', async () => {
    const [first, ...others] = book.keys;
    expect(
      await codeOf(
        await handoverBytes(testSource(book, { deviceKeys: [{ device: first!.device, key: testKeys(55).publicKey }, ...others] })),
      ),
    ).toBe('key-of-another-device');
    expect(await codeOf(await handoverBytes(testSource(book, { deviceKeys: others })))).toBe('file-device-without-key');
  });
  test('refuses an entry of another job, a broken chain, a head of no entry', async () => {
    const foreign = testWriter(2, TEST_JOB.replace(/.$/, 'z')).write('note-written', { text: 'replayed' });
    expect(await codeOf(await handoverBytes(testSource({ ...book, entries: [...book.entries, foreign] })))).toBe('entry-of-another-book');
    const dropped = book.entries.filter((_, i) => i !== 15);
    expect(await codeOf(await handoverBytes(testSource({ ...book, entries: dropped })))).toBe('chain-has-a-gap');
    expect(await codeOf(await handoverBytes(testSource({ ...book, entries: book.entries.slice(0, 20) })))).toBe('file-head-of-no-entry');
    // the entry that a copied phone went on from is gone: seen in the second reading
    const fork = testBook(1);
    const photo = fork.entries.findIndex(({ entry }) => entry.kind === 'photo-taken');
    const orphan = fork.entries.filter((_, i) => i !== photo);
    expect(await codeOf(await handoverBytes(testSource({ ...fork, entries: orphan })))).toBe('chain-has-a-gap');
  });
  test('names the first byte that does not fit', async () => {
    const flip = async (place: number) => {
      const changed = file.slice();
      changed[place]! ^= 1;
      const result = await verify(changed);
      return result.ok ? undefined : result.fault;
    };
    const entry = at('"kind":"bolt-tightened"');
    const line = Buffer.from(file).lastIndexOf('\n', entry) + 1;
    expect(await flip(entry + 10)).toMatchObject({ byte: line, reason: { code: 'receipt-of-another-entry' } });
    expect(await flip(0)).toMatchObject({ byte: 0, reason: { code: 'file-of-another-kind' } });
    const photo = at('attachment 3000 ');
    expect(await flip(at('\n', photo) + 500)).toMatchObject({ byte: at('\n', photo) + 1, reason: { code: 'file-section-differs' } });
    expect(await verify(file.slice(0, -10))).toMatchObject({
      ok: false,
      fault: { byte: file.length - 10, reason: { code: 'file-cut-short' } },
    });
    expect(await verify(Uint8Array.from([...file, 10]))).toMatchObject({
      ok: false,
      fault: { byte: file.length, reason: { code: 'file-goes-on' } },
    });
  });
  test('refuses sections that are missing, twice, or in another order', async () => {
    const text = Buffer.from(file);
    const [report, absent] = [at('\nreport ') + 1, at('\nmissing ') + 1];
    const without = Buffer.concat([text.subarray(0, report), text.subarray(absent)]);
    expect(await codeOf(without)).toBe('file-seal-differs');
    const twice = Buffer.concat([text.subarray(0, absent), text.subarray(report, absent), text.subarray(absent)]);
    expect(await codeOf(twice)).toBe('file-section-out-of-place');
    expect(await codeOf(new Uint8Array(0))).toBe('file-of-another-kind');
  });
});
