import { rootOf, signCheckpoint } from '@clampwright/record';
import type { Store } from '@clampwright/store';
import type { LogKey } from './log-key.ts';

/** Signs the log of a book as it stands. The same size gives the same note, so the last of each book is remembered. */
export function openCheckpoints(store: Store, log: LogKey) {
  const last = new Map<string, { size: number; note: string }>();
  return async (job: string): Promise<{ readonly size: number; readonly note: string }> => {
    const tail = await store.tail(job);
    const known = last.get(job);
    if (known?.size === tail.size) return known;
    const checkpoint = { size: tail.size, note: signCheckpoint({ job, size: tail.size, root: rootOf(tail) }, log.name, log.keys) };
    last.set(job, checkpoint);
    return checkpoint;
  };
}
