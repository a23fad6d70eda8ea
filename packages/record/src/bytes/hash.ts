import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';

/** SHA-256 as 64 lower-case hexadecimal digits: the name of an entry, a plan, a photo. */
export type Hash = string & { readonly hash: true };

const PATTERN = /^[0-9a-f]{64}$/;

export const isHash = (text: string): text is Hash => PATTERN.test(text);

export const digest = (bytes: Uint8Array): Uint8Array => sha256(bytes);

/**
 * Name of some bytes: their SHA-256 (FIPS 180-4) in hexadecimal.
 *
 * @example
 * expect(hashOf(utf8('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
 */
export const hashOf = (bytes: Uint8Array): Hash => bytesToHex(sha256(bytes)) as Hash;
