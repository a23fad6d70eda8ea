import { done, notice, type Outcome, refused } from '@clampwright/core';
import { readCanonical } from '../bytes/canonical.ts';
import { utf8 } from '../bytes/text.ts';
import { field, z } from '../entry/field.ts';

/** The log's word for an entry: its place and when it arrived. Its canonical bytes are the leaf of the Merkle tree. */
export const receipt = z.strictObject({ job: field.book, index: field.count, entry: field.hash, arrived: field.instant });
export type Receipt = Readonly<z.infer<typeof receipt>>;

/** Canonical as it stands: keys in order, and nothing in them that JSON would write in another way. Made for every entry of a log. */
export const receiptBytes = ({ arrived, entry, index, job }: Receipt): Uint8Array =>
  utf8(`{"arrived":"${arrived}","entry":"${entry}","index":${index},"job":"${job}"}`);

export function readReceipt(bytes: Uint8Array): Outcome<Receipt> {
  const value = readCanonical(bytes);
  if (!value.ok) return value;
  const read = receipt.safeParse(value.value);
  return read.success
    ? done(read.data)
    : refused(...read.error.issues.map(({ path }) => notice('receipt-malformed', { field: path.join('.') || 'receipt' })));
}
