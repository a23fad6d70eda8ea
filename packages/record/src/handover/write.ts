import { bytesToHex } from '@noble/hashes/utils.js';
import { canonicalBytes, type Json } from '../bytes/canonical.ts';
import type { Hash } from '../bytes/hash.ts';
import type { KeyPair } from '../bytes/keys.ts';
import { joinBytes, utf8 } from '../bytes/text.ts';
import { headBytes, type SignedHead } from '../chain/head.ts';
import { type Receipt, receiptBytes } from '../chain/receipt.ts';
import { type Section, sectionOf, writeContainer } from '../container/write.ts';
import { readEntry } from '../entry/envelope.ts';
import { noteKeyText, signCheckpoint, signNote } from '../merkle/checkpoint.ts';
import { type Frontier, rootOf } from '../merkle/tree.ts';
import { type About, HANDOVER_LINE, MOST_SECTION_BYTES, namedBy } from './format.ts';

/** Where a handover file is written from: a book of the store, read up to one size. */
export interface HandoverSource {
  readonly job: string;
  readonly title: string;
  readonly site: string;
  readonly tail: Frontier;
  readonly rows: (from: number, limit: number) => Promise<readonly { readonly receipt: Receipt; readonly bytes: Uint8Array }[]>;
  readonly heads: readonly SignedHead[];
  readonly deviceKeys: readonly { readonly device: string; readonly key: Uint8Array }[];
  readonly attachmentSize: (hash: string) => Promise<number | undefined>;
  readonly attachment: (hash: string) => AsyncIterable<Uint8Array>;
  readonly report?: Uint8Array;
  readonly made: Date;
}

const ROWS = 500;
const NEWLINE = Uint8Array.of(10);

/** One file with all of a job: a stranger can verify it with no server and no network. */
export const writeHandover = (source: HandoverSource, log: { readonly name: string; readonly keys: KeyPair }): AsyncGenerator<Uint8Array> =>
  writeContainer(HANDOVER_LINE, sectionsOf(source, log), (text) => signNote(text, log.name, log.keys));

async function* sectionsOf(source: HandoverSource, log: { name: string; keys: KeyPair }): AsyncGenerator<Section> {
  const { job, title, site, tail } = source;
  const json = (name: string, value: Json) => sectionOf(name, canonicalBytes(value));
  yield json('about', { job, title, site, made: source.made.toISOString(), size: tail.size } satisfies About);
  yield json('keys', {
    log: noteKeyText({ name: log.name, publicKey: log.keys.publicKey }),
    devices: [...source.deviceKeys]
      .sort((a, b) => (a.device < b.device ? -1 : 1))
      .map(({ device, key }) => ({ device, key: bytesToHex(key) })),
  });
  yield sectionOf('checkpoint', utf8(signCheckpoint({ job, size: tail.size, root: rootOf(tail) }, log.name, log.keys)));
  for (let at = 0; at < source.heads.length; at += 1000)
    yield sectionOf('heads', joinBytes(...source.heads.slice(at, at + 1000).flatMap((head) => [headBytes(head), NEWLINE])));
  const named = new Set<string>();
  yield* entrySections(source, named);
  const missing: Hash[] = [];
  for (const hash of [...named].sort() as Hash[]) {
    const length = await source.attachmentSize(hash);
    if (length === undefined) missing.push(hash);
    else yield { name: 'attachment', length, hash, bytes: source.attachment(hash) };
  }
  if (source.report) yield sectionOf('report', source.report);
  yield json('missing', { attachments: missing });
}

async function* entrySections({ tail, rows }: HandoverSource, named: Set<string>): AsyncGenerator<Section> {
  let held: Uint8Array[] = [];
  let length = 0;
  const closed = () => {
    const section = sectionOf('entries', joinBytes(...held));
    [held, length] = [[], 0];
    return section;
  };
  for (let from = 0; from < tail.size; ) {
    const some = await rows(from, Math.min(ROWS, tail.size - from));
    if (some.length === 0) throw new Error(`the log ends at ${from}, before its size of ${tail.size}`);
    from += some.length;
    for (const { receipt, bytes } of some) {
      const pair = [receiptBytes(receipt), NEWLINE, bytes, NEWLINE];
      const own = pair.reduce((sum, one) => sum + one.length, 0);
      if (length + own > MOST_SECTION_BYTES) yield closed();
      held.push(...pair);
      length += own;
      const kept = readEntry(bytes);
      if (kept.ok) for (const hash of namedBy(kept.value.entry)) named.add(hash);
    }
  }
  if (held.length > 0) yield closed();
}
