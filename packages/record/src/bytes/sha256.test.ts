import { sha256 as portable } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sha256, sha256Hex } from './sha256.ts';

test('sha256() gives what the portable library gives, in bytes and in digits', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      expect(sha256(bytes)).toEqual(portable(bytes));
      expect(sha256Hex(bytes)).toBe(bytesToHex(portable(bytes)));
    }),
  );
});
