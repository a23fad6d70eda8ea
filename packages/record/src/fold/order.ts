import type { Hash } from '../bytes/hash.ts';
import type { Envelope } from '../entry/envelope.ts';

interface Placed {
  readonly hash: Hash;
  readonly entry: Pick<Envelope, 'counter' | 'device' | 'sequence'>;
}

/**
 * The order of events, the same wherever they are read: counter, then device. A counter is above all that its device knew, so causes
 * come before effects; between entries that did not know of each other the order is arbitrary and fixed. Clocks have no say.
 */
export function compareEntries(a: Placed, b: Placed): number {
  if (a.entry.counter !== b.entry.counter) return a.entry.counter - b.entry.counter;
  if (a.entry.device !== b.entry.device) return a.entry.device < b.entry.device ? -1 : 1;
  if (a.entry.sequence !== b.entry.sequence) return a.entry.sequence - b.entry.sequence;
  return a.hash === b.hash ? 0 : a.hash < b.hash ? -1 : 1;
}

/** Where in a sorted list something belongs: the first place whose entry comes after it. */
export function placeOf(list: readonly Placed[], one: Placed): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (compareEntries(list[middle]!, one) < 0) low = middle + 1;
    else high = middle;
  }
  return low;
}
