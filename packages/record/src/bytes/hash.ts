import { sha256, sha256Hex } from './sha256.ts';

/** SHA-256 as 64 lower-case hexadecimal digits: the name of an entry, a plan, a photo. */
export type Hash = string & { readonly hash: true };

const PATTERN = /^[0-9a-f]{64}$/;

export const isHash = (text: string): text is Hash => PATTERN.test(text);

export const digest = sha256;

/**
 * Name of some bytes: their SHA-256 (FIPS 180-4) in hexadecimal.
 *
 * @example
 * expect(hashOf(utf8('abc'))).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
 */
export const hashOf = (bytes: Uint8Array): Hash => sha256Hex(bytes) as Hash;
