import { hexToBytes } from '@noble/hashes/utils.js';
import { describe, expect, test } from 'vitest';
import { isSignedBy, keyPairOf, sign } from '../bytes/keys.ts';
import { TEST_JOB, testKeys } from '../test-book.ts';
import { type Checkpoint, noteKeyText, openCheckpoint, openNote, readNoteKey, signCheckpoint } from './checkpoint.ts';

// RFC 8032, 7.1, test 1
test('sign() gives the signature that RFC 8032, 7.1 prints', () => {
  const keys = keyPairOf(hexToBytes('9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60'));
  expect(keys.publicKey).toEqual(hexToBytes('d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a'));
  const signature = hexToBytes(
    'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
  );
  expect(sign(new Uint8Array(0), keys)).toEqual(signature);
  expect(isSignedBy(new Uint8Array(0), signature, keys.publicKey)).toBe(true);
  expect(isSignedBy(new Uint8Array(1), signature, keys.publicKey)).toBe(false);
});

// The example of the C2SP signed-note specification and of the Go module that it was written down from.
describe('the published signed note', () => {
  const key = readNoteKey('PeterNeumann+c74f20a3+ARpc2QcUPDhMQegwxbzhKqiBfsVkmqq/LDE4izWy10TW');
  const text = "If you think cryptography is the answer to your problem,\nthen you don't know what your problem is.\n";
  const signature = 'x08go/ZJkuBS9UG/SffcvIAQxVBtiFupLLr8pAcElZInNIuGUgYN1FFYC2pZSNXgKvqfqdngotpRZb6KE6RyyBwJnAM=';
  test('opens with its key', () => {
    if (!key.ok) throw new Error('no key');
    expect(openNote(`${text}\n— PeterNeumann ${signature}\n`, key.value)).toEqual({ ok: true, value: text });
  });
  test('does not open when a letter is another', () => {
    if (!key.ok) throw new Error('no key');
    expect(openNote(`${text.replace('you', 'You')}\n— PeterNeumann ${signature}\n`, key.value).ok).toBe(false);
  });
});

describe('a checkpoint', () => {
  const keys = testKeys(3);
  const key = { name: 'skerrow', publicKey: keys.publicKey };
  const checkpoint: Checkpoint = { job: TEST_JOB, size: 12, root: new Uint8Array(32).fill(7) };
  const note = signCheckpoint(checkpoint, 'skerrow', keys);
  test('is read back with its key', () => {
    expect(openCheckpoint(note, key)).toEqual({ ok: true, value: checkpoint });
    expect(readNoteKey(noteKeyText(key))).toEqual({ ok: true, value: key });
  });
  test('is refused with any character changed, dropped or added', () => {
    for (let at = 0; at < note.length; at += 1) {
      const other = note[at] === 'x' ? 'y' : 'x';
      for (const changed of [
        note.slice(0, at) + other + note.slice(at + 1),
        note.slice(0, at) + note.slice(at + 1),
        `${note.slice(0, at)}x${note.slice(at)}`,
      ])
        expect({ at, ok: openCheckpoint(changed, key).ok }).toEqual({ at, ok: false });
    }
  });
  test('is refused with the key of another', () => {
    expect(openCheckpoint(note, { name: 'skerrow', publicKey: testKeys(4).publicKey }).ok).toBe(false);
  });
});
