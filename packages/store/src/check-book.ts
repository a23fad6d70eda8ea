import { EMPTY_FRONTIER, type Frontier, grow, type Hash, leafHash, readEntry, receiptBytes, rootOf, sameBytes } from '@clampwright/record';
import type { Row } from './store.ts';

/** What a check reads: nothing of how entries were written. */
export interface BookReader {
  readonly rows: (job: string, from: number, limit: number) => Promise<readonly Row[]>;
  readonly tail: (job: string) => Promise<Frontier>;
}

export interface BookCheck {
  readonly job: string;
  readonly size: number;
  readonly root: Uint8Array;
  /** what does not fit, the first of it */
  readonly fault?: string;
}

const PAGE = 1000;

/** Reads every entry of a book again: its bytes against its hash, its place in the chain of its device, the tree against the tail. */
export async function checkBook(reader: BookReader, job: string): Promise<BookCheck> {
  const tail = await reader.tail(job);
  const chains = new Map<string, Map<number, Hash[]>>();
  let frontier: Frontier = EMPTY_FRONTIER;
  const faulty = (fault: string): BookCheck => ({ job, size: frontier.size, root: rootOf(frontier), fault });
  for (;;) {
    const rows = await reader.rows(job, frontier.size, PAGE);
    if (rows.length === 0) break;
    for (const { receipt, bytes } of rows) {
      const at = `entry ${frontier.size}`;
      const kept = readEntry(bytes);
      if (receipt.index !== frontier.size) return faulty(`${at} is missing`);
      if (!kept.ok) return faulty(`${at} cannot be read`);
      if (kept.value.hash !== receipt.entry) return faulty(`${at} does not have its hash`);
      const { device, sequence, previous, job: own } = kept.value.entry;
      if (own !== job) return faulty(`${at} belongs to another book`);
      const chain = chains.get(device) ?? new Map<number, Hash[]>();
      chains.set(device, chain);
      if (previous !== undefined && !chain.get(sequence - 1)?.includes(previous)) return faulty(`${at} does not follow on its chain`);
      chain.set(sequence, [...(chain.get(sequence) ?? []), kept.value.hash]);
      frontier = grow(frontier, leafHash(receiptBytes(receipt)));
    }
  }
  if (frontier.size !== tail.size) return faulty(`the log ends at ${frontier.size}, not at ${tail.size}`);
  if (!sameBytes(rootOf(frontier), rootOf(tail))) return faulty('the tree does not have the root that was kept');
  return { job, size: frontier.size, root: rootOf(frontier) };
}

/** The last few entries of a book, at start-up: enough to see that it opens and its end is whole. */
export async function checkEnd(reader: BookReader, job: string): Promise<string | undefined> {
  const { size } = await reader.tail(job);
  const rows = await reader.rows(job, Math.max(0, size - 20), 100);
  const last = rows.at(-1);
  if ((last?.receipt.index ?? -1) + 1 !== size) return `the log ends at ${(last?.receipt.index ?? -1) + 1}, not at ${size}`;
  for (const { receipt, bytes } of rows) {
    const kept = readEntry(bytes);
    if (!kept.ok || kept.value.hash !== receipt.entry) return `entry ${receipt.index} does not have its hash`;
  }
  return undefined;
}
