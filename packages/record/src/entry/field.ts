import { civilDate } from '@clampwright/core';
import * as z from 'zod/mini';
import { type Hash, isHash } from '../bytes/hash.ts';
import { BOOK_PATTERN, DEVICE_PATTERN, idPattern } from '../bytes/id.ts';

// A page allows no code from text (its policy says so); elsewhere readers of entries are compiled, which is several times faster.
if ('document' in globalThis) z.config({ jitless: true });

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/;
const isInstant = (text: string) => INSTANT.test(text) && !Number.isNaN(Date.parse(text)) && new Date(text).toISOString() === text;

/** The few kinds of field that entries are made of. */
export const field = {
  /** one line or a few; what a person wrote */
  text: z.string().check(z.minLength(1), z.maxLength(2000)),
  /** a serial number, a setting, a tag: short and on one line */
  label: z.string().check(z.minLength(1), z.maxLength(120), z.regex(/^[^\p{Cc}]+$/u)),
  hash: z.string().check(z.refine(isHash)) as unknown as z.ZodMiniType<Hash, Hash>,
  book: z.string().check(z.regex(BOOK_PATTERN)),
  device: z.string().check(z.regex(DEVICE_PATTERN)),
  joint: z.string().check(z.regex(idPattern('joint'))),
  person: z.string().check(z.regex(idPattern('person'))),
  lot: z.string().check(z.regex(idPattern('lot'))),
  /** a bolt is its joint and its position, 1-based, never renumbered */
  position: z.int().check(z.minimum(1), z.maximum(10_000)),
  count: z.int().check(z.minimum(0), z.maximum(1_000_000_000)),
  whole: z.int(),
  yes: z.boolean(),
  /** RFC 3339 in UTC, to the millisecond */
  instant: z.string().check(z.refine(isInstant)),
  date: z.string().check(z.refine((text) => civilDate(text) === text)),
  /** Ed25519 public key, hexadecimal */
  key: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
} as const;

export const positions = z.array(field.position).check(z.minLength(1), z.maxLength(10_000));
export { z };
