import {
  checkHead,
  EMPTY_FRONTIER,
  type Frontier,
  grow,
  type Hash,
  leafHash,
  type NoteKey,
  openCheckpoint,
  readEntry,
  receiptBytes,
  rootOf,
  type SignedHead,
  sameBytes,
} from '@clampwright/record';
import type { Row } from './store.ts';

/** What a check reads: nothing of how entries were written. */
export interface BookReader {
  readonly rows: (job: string, from: number, limit: number) => Promise<readonly Row[]>;
  readonly tail: (job: string) => Promise<Frontier>;
  readonly heads: (job: string) => Promise<readonly SignedHead[]>;
  readonly checkpoints: (job: string) => Promise<readonly { readonly size: number; readonly note: string }[]>;
}

/** With the keys that are known, signatures are checked too. */
export interface KnownKeys {
  readonly log?: NoteKey;
  readonly device?: (device: string) => Promise<Uint8Array | undefined>;
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
export async function checkBook(reader: BookReader, job: string, keys: KnownKeys = {}): Promise<BookCheck> {
  const tail = await reader.tail(job);
  const handedOut = new Map((await reader.checkpoints(job)).map(({ size, note }) => [size, note]));
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
      const note = handedOut.get(frontier.size);
      if (note !== undefined && !isOfTree(note, job, frontier, keys.log))
        return faulty(`the checkpoint of ${frontier.size} entries is of another log`);
      handedOut.delete(frontier.size);
    }
  }
  if (handedOut.size > 0) return faulty(`a checkpoint of ${Math.max(...handedOut.keys())} entries was handed out`);
  if (frontier.size !== tail.size) return faulty(`the log ends at ${frontier.size}, not at ${tail.size}`);
  if (!sameBytes(rootOf(frontier), rootOf(tail))) return faulty('the tree does not have the root that was kept');
  for (const head of await reader.heads(job)) {
    const { device, sequence, hash } = head;
    if (
      !chains
        .get(device)
        ?.get(sequence)
        ?.includes(hash as Hash)
    )
      return faulty(`${device} signed an entry ${sequence} that is not here`);
    const key = await keys.device?.(device);
    if (key && !checkHead(head, key).ok) return faulty(`the signature of ${device} does not fit its entry ${sequence}`);
  }
  return { job, size: frontier.size, root: rootOf(frontier) };
}

function isOfTree(note: string, job: string, frontier: Frontier, log: NoteKey | undefined): boolean {
  if (!log) return true;
  const checkpoint = openCheckpoint(note, log);
  return checkpoint.ok && checkpoint.value.job === job && sameBytes(checkpoint.value.root, rootOf(frontier));
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
