import { canonicalBytes, type Json } from '../bytes/canonical.ts';
import { hashOf } from '../bytes/hash.ts';
import { type Envelope, type Kept, LARGEST_ENTRY_BYTES } from './envelope.ts';
import type { z } from './field.ts';
import { type BodyOf, KINDS, type KindName } from './kinds/index.ts';

/** What a device knows when it writes an entry, besides what the entry tells. */
export type Around = Omit<Envelope, 'format' | 'kind' | 'version' | 'body'>;

/** Makes an entry. A body that is not as its kind describes is a defect of the caller and throws. */
export function writeEntry<K extends KindName>(around: Around, kind: K, body: BodyOf<K>): Kept {
  const { version, body: schema } = KINDS[kind];
  const checked = (schema as z.ZodMiniType<BodyOf<K>>).parse(body) as Envelope['body'];
  const entry: Envelope = { ...around, format: 1, kind, version, body: checked };
  const bytes = canonicalBytes(entry as Json);
  if (bytes.length > LARGEST_ENTRY_BYTES) throw new RangeError(`an entry of ${bytes.length} bytes; the limit is ${LARGEST_ENTRY_BYTES}`);
  return { hash: hashOf(bytes), bytes, entry };
}
