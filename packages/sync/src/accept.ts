import { type Notice, notice, type Outcome, refused } from '@clampwright/core';
import { checkHead, type Hash, type Kept, type Receipt, type SignedHead } from '@clampwright/record';
import type { Batch } from './batch.ts';

/** What the server's side needs of the log. Implemented by the store. */
export interface Log {
  /** The counter of an entry that is in the book, by device, place and hash. */
  readonly counterOf: (job: string, device: string, sequence: number, hash: Hash) => Promise<number | undefined>;
  /** Entries and heads, whole or not at all, durable when it resolves; what is known keeps its place and receipt. */
  readonly append: (job: string, entries: readonly Kept[], heads: readonly SignedHead[]) => Promise<readonly Receipt[]>;
}

/**
 * Takes a batch of a device, or says everything that keeps it from being taken. Form, chain and signature are checked here; what an
 * entry tells is not: a contradiction is kept and shown, never turned away.
 */
export async function acceptBatch(
  log: Log,
  job: string,
  { heads, entries }: Batch,
  publicKey: Uint8Array,
): Promise<Outcome<readonly Receipt[]>> {
  const { device } = heads[0]!;
  const faults: Notice[] = [];
  for (const head of heads) {
    if (head.job !== job) faults.push(notice('entry-of-another-book', { job: head.job }));
    const checked = checkHead(head, publicKey);
    if (!checked.ok) faults.push(...checked.notices);
    if (!entries.some(({ hash, entry }) => hash === head.hash && entry.sequence === head.sequence))
      faults.push(notice('head-not-signed', { device: head.device, sequence: head.sequence }));
  }
  if (!heads.some(({ hash }) => hash === entries.at(-1)!.hash))
    faults.push(notice('head-not-signed', { device, sequence: entries.at(-1)!.entry.sequence }));
  for (const { entry } of entries) {
    if (entry.job !== job) faults.push(notice('entry-of-another-book', { job: entry.job }));
    if (entry.device !== device) faults.push(notice('entry-of-another-device', { device: entry.device }));
  }
  if (faults.length > 0) return refused(...faults.slice(0, 20));
  const broken = await brokenLink(log, job, entries);
  return broken ? refused(broken) : { ok: true, value: await log.append(job, entries, heads) };
}

/** The first entry that does not follow on the one before it, in the batch or in the book. */
async function brokenLink(log: Log, job: string, entries: readonly Kept[]): Promise<Notice | undefined> {
  for (const [at, { entry }] of entries.entries()) {
    const { device, sequence, previous, counter } = entry;
    const before = entries[at - 1];
    if (at > 0 && (before!.hash !== previous || before!.entry.sequence !== sequence - 1))
      return notice('chain-has-a-gap', { device, sequence });
    if (previous === undefined) continue;
    const known = at > 0 ? before!.entry.counter : await log.counterOf(job, device, sequence - 1, previous as Hash);
    if (known === undefined) return notice('chain-has-a-gap', { device, sequence });
    if (counter <= known) return notice('chain-counter-falls', { device, sequence });
  }
  return undefined;
}
