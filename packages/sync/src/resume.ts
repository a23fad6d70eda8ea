import type { Hash, Kept } from '@clampwright/record';
import { type Chain, toJson } from './device.ts';
import { keyOf } from './keys.ts';
import { memoryShelf, type Shelf } from './shelf.ts';

/** A shelf from which a device goes on with its chain where the log has it: for a device that lives beside the log and keeps nothing of its own. */
export function resumedShelf(job: string, device: string, log: Iterable<Kept>): Shelf {
  let [next, counter] = [0, 0];
  let previous: Hash | undefined;
  const heads = new Map<string, Hash>();
  const told = new Set<string>();
  for (const { hash, entry } of log) {
    counter = Math.max(counter, entry.counter);
    if (entry.device !== device) heads.set(entry.device, hash);
    else {
      next = entry.sequence + 1;
      previous = hash;
      for (const one of entry.seen ?? []) told.add(one);
    }
  }
  const unseen = Object.fromEntries([...heads].filter(([, hash]) => !told.has(hash)));
  const chain: Chain = { next, counter, unseen, acknowledged: next, ...(previous === undefined ? {} : { previous }) };
  return memoryShelf(new Map([[keyOf.chain(job), toJson(chain)]]));
}
