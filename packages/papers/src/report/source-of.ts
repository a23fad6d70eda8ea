import { type HandoverSource, type KeyPair, noteKeyText, openFold, readEntry, rootOf, signCheckpoint } from '@clampwright/record';
import type { ReportSource } from './source.ts';

const ROWS = 1000;

/** The source of a report from the source of a handover file: the same entries, the same root, the same signature. */
export async function reportSourceOf(
  { job, title, site, tail, rows, heads, attachmentSize, attachment }: HandoverSource,
  log: { readonly name: string; readonly keys: KeyPair },
  engine: string,
): Promise<ReportSource> {
  const fold = openFold();
  for (let from = 0; from < tail.size; ) {
    const some = await rows(from, Math.min(ROWS, tail.size - from));
    if (some.length === 0) throw new Error(`the log ends at ${from}, before its size of ${tail.size}`);
    from += some.length;
    for (const { bytes } of some) {
      const kept = readEntry(bytes);
      if (kept.ok) fold.add(kept.value);
    }
  }
  const signedUpTo = new Map<string, number>();
  for (const { device, sequence } of heads) signedUpTo.set(device, Math.max(sequence, signedUpTo.get(device) ?? -1));
  const root = rootOf(tail);
  return {
    job,
    title,
    site,
    size: tail.size,
    root: [...root].map((byte) => byte.toString(16).padStart(2, '0')).join(''),
    checkpoint: signCheckpoint({ job, size: tail.size, root }, log.name, log.keys),
    logKey: noteKeyText({ name: log.name, publicKey: log.keys.publicKey }),
    fold,
    rows,
    signedUpTo,
    engine,
    attachment: async (hash) => ((await attachmentSize(hash)) === undefined ? undefined : whole(attachment(hash))),
  };
}

async function whole(parts: AsyncIterable<Uint8Array>): Promise<Uint8Array> {
  const all: Uint8Array[] = [];
  for await (const part of parts) all.push(part);
  const bytes = new Uint8Array(all.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of all) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}
