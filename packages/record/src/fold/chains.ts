import { notice } from '@clampwright/core';
import type { Hash } from '../bytes/hash.ts';
import type { Kept } from '../entry/envelope.ts';
import { type Found, foundIn } from './found.ts';

/** Which entries are known, place by place in every device's chain; where one place holds two, the device was copied or set back. */
export function openChains() {
  const byHash = new Map<Hash, Kept>();
  /** by place: one hash, or all that were told there */
  const chains = new Map<string, (Hash | Hash[])[]>();
  const linked: Kept[] = [];
  const forks: { readonly device: string; readonly sequence: number; readonly told: readonly Hash[] }[] = [];
  /** until another entry comes: pages of a job ask for it again and again */
  let found: readonly Found[] | undefined;

  const look = (): Found[] => {
    const forked = forks.map(({ device, sequence, told }) => ({
      id: `device-forked:${device}:${sequence}`,
      notice: notice('device-forked', { device, sequence }),
      entry: [...told].sort()[0]!,
    }));
    const behind = linked.flatMap(({ hash, entry }) => {
      const known = Math.max(-1, ...(entry.seen ?? []).map((one) => byHash.get(one as Hash)?.entry.counter ?? -1));
      return known >= entry.counter ? [foundIn(hash, notice('counter-behind', { counter: entry.counter, known }))] : [];
    });
    return [...forked, ...behind].sort((a, b) => (a.id < b.id ? -1 : 1));
  };

  return {
    find: (hash: string): Kept | undefined => byHash.get(hash as Hash),
    /** false where the entry was known */
    add(kept: Kept): boolean {
      if (byHash.has(kept.hash)) return false;
      byHash.set(kept.hash, kept);
      found = undefined;
      const { device, sequence, seen } = kept.entry;
      if (seen) linked.push(kept);
      const chain = chains.get(device) ?? [];
      chains.set(device, chain);
      const there = chain[sequence];
      if (there === undefined) chain[sequence] = kept.hash;
      else if (typeof there === 'string') {
        const told = [there, kept.hash];
        chain[sequence] = told;
        forks.push({ device, sequence, told });
      } else there.push(kept.hash);
      return true;
    },
    size: () => byHash.size,
    devices: () => [...chains.keys()].sort(),
    found(): readonly Found[] {
      found ??= look();
      return found;
    },
  };
}
