import { done, notice, type Outcome, refused } from '@clampwright/core';
import { readUtf8, sameBytes, utf8 } from './text.ts';

/** What an entry may be made of: no floating point, no null. A number with a fraction is an integer of a smaller unit. */
export type Json = string | boolean | number | readonly Json[] | { readonly [key: string]: Json };

const DEEPEST = 16;
const LONE_SURROGATE = /\p{Surrogate}/u;

/** A value that canonical JSON of this product has no place for: a defect of the caller. */
class NotCanonical extends Error {}

function write(value: unknown, depth: number): string {
  if (depth > DEEPEST) throw new NotCanonical(`deeper than ${DEEPEST} levels`);
  switch (typeof value) {
    case 'string':
      if (LONE_SURROGATE.test(value)) throw new NotCanonical('half of a character');
      return JSON.stringify(value);
    case 'boolean':
      return value ? 'true' : 'false';
    case 'number':
      if (!Number.isSafeInteger(value)) throw new NotCanonical(`${value} is no safe integer`);
      return String(value);
    case 'object':
      if (value === null) throw new NotCanonical('null');
      if (Array.isArray(value)) return `[${value.map((one) => write(one, depth + 1)).join(',')}]`;
      return `{${Object.keys(value)
        .sort()
        .map((key) => `${write(key, depth + 1)}:${write((value as Record<string, unknown>)[key], depth + 1)}`)
        .join(',')}}`;
    default:
      throw new NotCanonical(typeof value);
  }
}

/**
 * Canonical JSON (RFC 8785) of strings, booleans and safe integers: keys in UTF-16 order, no space, one spelling for every value.
 *
 * @example
 * expect(canonicalText({ step: 2, bolt: 'é' })).toBe('{"bolt":"é","step":2}');
 */
export const canonicalText = (value: Json): string => write(value, 0);
export const canonicalBytes = (value: Json): Uint8Array => utf8(canonicalText(value));

/** The value of canonical bytes. Anything else that JSON would also accept is refused: what is hashed has one spelling. */
export function readCanonical(bytes: Uint8Array): Outcome<Json> {
  const text = readUtf8(bytes);
  if (text === undefined) return refused(notice('not-canonical', { why: 'not UTF-8' }));
  try {
    const value = JSON.parse(text) as Json;
    return sameBytes(canonicalBytes(value), bytes) ? done(value) : refused(notice('not-canonical', { why: 'another spelling' }));
  } catch (error) {
    if (error instanceof NotCanonical) return refused(notice('not-canonical', { why: error.message }));
    if (error instanceof SyntaxError) return refused(notice('not-canonical', { why: 'not JSON' }));
    throw error;
  }
}
