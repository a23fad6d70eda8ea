import { sha256 as portable } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

interface NodeCrypto {
  hash(algorithm: string, bytes: Uint8Array, encoding: 'hex'): string;
  hash(algorithm: string, bytes: Uint8Array, encoding: 'buffer'): Uint8Array;
}
declare const process: { readonly getBuiltinModule?: (name: string) => unknown } | undefined;

// A browser's own SHA-256 answers only later; Node's answers at once, and seven times faster than any in JavaScript.
const node = typeof process === 'undefined' ? undefined : (process.getBuiltinModule?.('node:crypto') as NodeCrypto | undefined);

/** SHA-256 (FIPS 180-4): 32 bytes. */
export const sha256 = (bytes: Uint8Array): Uint8Array => {
  if (!node) return portable(bytes);
  const { buffer, byteOffset, length } = node.hash('sha256', bytes, 'buffer');
  return new Uint8Array(buffer, byteOffset, length);
};

/** SHA-256 as 64 lower-case hexadecimal digits. */
export const sha256Hex = (bytes: Uint8Array): string => node?.hash('sha256', bytes, 'hex') ?? bytesToHex(portable(bytes));
