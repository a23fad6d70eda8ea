import { done, notice, type Outcome, refused } from '@clampwright/core';
import { type Json, readCanonical } from '../bytes/canonical.ts';
import { type Hash, hashOf } from '../bytes/hash.ts';
import { field, z } from './field.ts';

/** What every entry carries, whatever it tells. Field by field in docs/entry-format.md. */
export const envelope = z.strictObject({
  format: z.literal(1),
  /** the book it belongs to: a job or the yard */
  job: field.book,
  device: field.device,
  /** place in the chain of this device in this book, from 0 */
  sequence: field.count,
  /** hash of the entry before it in that chain; absent in the first */
  previous: z.optional(field.hash),
  /** heads of other chains that were known, as far as not told before */
  seen: z.optional(z.array(field.hash).check(z.minLength(1), z.maxLength(256))),
  /** logical clock: above that of every entry known to the device */
  counter: field.count,
  /** the device's clock, and its offset from UTC in minutes: evidence, never order */
  at: field.instant,
  offsetMinutes: z.int().check(z.minimum(-900), z.maximum(900)),
  /** who held the device, told by PIN */
  by: z.optional(field.person),
  /** entered later from paper: when it was done, and which card says so */
  paper: z.optional(z.strictObject({ done: field.date, card: field.label })),
  kind: z.string().check(z.regex(/^[a-z][a-z0-9-]{0,60}$/)),
  version: z.int().check(z.minimum(1), z.maximum(1000)),
  body: z.record(z.string(), z.unknown()),
});

export type Envelope = Readonly<z.infer<typeof envelope>>;

/** An entry as kept: the bytes received, their hash, and what they say. */
export interface Kept {
  readonly hash: Hash;
  readonly bytes: Uint8Array;
  readonly entry: Envelope;
}

export const LARGEST_ENTRY_BYTES = 65_536;

/** Reads the bytes of an entry of any kind. The body is not looked at: a kind of later versions is kept like any other. */
export function readEntry(bytes: Uint8Array): Outcome<Kept> {
  if (bytes.length > LARGEST_ENTRY_BYTES) return refused(notice('entry-too-large', { bytes: bytes.length, limit: LARGEST_ENTRY_BYTES }));
  const value = readCanonical(bytes);
  if (!value.ok) return value;
  const entry = readEnvelope(value.value);
  return entry.ok ? done({ hash: hashOf(bytes), bytes, entry: entry.value }) : entry;
}

function readEnvelope(value: Json): Outcome<Envelope> {
  const read = envelope.safeParse(value);
  if (!read.success)
    return refused(...read.error.issues.map(({ path }) => notice('entry-malformed', { field: path.join('.') || 'entry' })));
  const first = read.data.sequence === 0;
  if (first !== (read.data.previous === undefined)) return refused(notice('entry-malformed', { field: 'previous' }));
  return done(read.data);
}

/** Civil date on the device's clock. */
export function localDate({ at, offsetMinutes }: Pick<Envelope, 'at' | 'offsetMinutes'>): string {
  const minuteOfDay = Number(at.slice(11, 13)) * 60 + Number(at.slice(14, 16)) + offsetMinutes;
  // mostly it is the same day there: a fold asks this for every entry
  if (minuteOfDay >= 0 && minuteOfDay < 1440) return at.slice(0, 10);
  return new Date(Date.parse(at) + offsetMinutes * 60_000).toISOString().slice(0, 10);
}
