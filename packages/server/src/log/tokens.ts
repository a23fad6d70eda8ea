import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';

/** 256 random bits. */
export const newToken = (): string => randomBytes(32).toString('base64url');

/** What is kept of a token: whoever reads the store cannot show it. */
export const digestOf = (token: string): string => createHash('sha256').update(token).digest('hex');

export const isToken = (token: string, digest: string): boolean => timingSafeEqual(Buffer.from(digestOf(token)), Buffer.from(digest));

const ALPHABET = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

/** Ten characters that can be read over the radio: 50 bits, for ten minutes and one use. */
export function newCode(): string {
  const letters = [...randomBytes(10)].map((byte) => ALPHABET[byte & 31]).join('');
  return `${letters.slice(0, 5)}-${letters.slice(5)}`;
}
/** A code as typed: spaces, dashes and case do not matter, nor letters that look like digits. */
export const readCode = (typed: string): string => typed.toUpperCase().replace(/[\s-]/g, '').replace(/O/g, '0').replace(/[IL]/g, '1');
