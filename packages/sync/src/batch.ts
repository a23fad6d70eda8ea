import { done, notice, type Outcome, refused } from '@clampwright/core';
import { headBytes, type Kept, readEntry, readHead, type SignedHead } from '@clampwright/record';
import { compress, decompress } from './compress.ts';
import { linesOf, readLines } from './lines.ts';

/** A piece of one device's chain on its way to the server: signed heads, an empty line, entries in the order of the chain; gzip. */
export interface Batch {
  readonly heads: readonly SignedHead[];
  readonly entries: readonly Kept[];
}

export const MOST_ENTRIES = 500;
/** decompressed; a batch is closed before it grows beyond */
export const LARGEST_BATCH_BYTES = 4 * 1024 * 1024;

export const writeBatch = ({ heads, entries }: { heads: readonly SignedHead[]; entries: readonly Uint8Array[] }): Promise<Uint8Array> =>
  compress(linesOf([...heads.map(headBytes), new Uint8Array(0), ...entries]));

/** Reads a batch. All faults of its lines are said at once; one fault and nothing of it is taken. */
export async function readBatch(bytes: Uint8Array): Promise<Outcome<Batch>> {
  const plain = await decompress(bytes, LARGEST_BATCH_BYTES + 65_536);
  const lines = plain && readLines(plain);
  if (!lines) return refused(notice('batch-not-readable', { limit: LARGEST_BATCH_BYTES }));
  const gap = lines.findIndex(({ length }) => length === 0);
  const count = lines.length - gap - 1;
  if (gap < 1 || count < 1 || count > MOST_ENTRIES || gap > MOST_ENTRIES)
    return refused(notice('batch-malformed', { entries: MOST_ENTRIES }));
  const heads = lines.slice(0, gap).map(readHead);
  const entries = lines.slice(gap + 1).map(readEntry);
  const faults = [...heads, ...entries].flatMap((one) => (one.ok ? [] : one.notices));
  if (faults.length > 0) return refused(...faults.slice(0, 20));
  return done({
    heads: heads.flatMap((one) => (one.ok ? [one.value] : [])),
    entries: entries.flatMap((one) => (one.ok ? [one.value] : [])),
  });
}
