import { notice } from '@clampwright/core';
import type { Hash } from '../bytes/hash.ts';
import type { Kept } from '../entry/envelope.ts';
import { type Found, foundIn } from './found.ts';

/** Which entries are known, place by place in every device's chain; where one place holds two, the device was copied or set back. */
export function openChains() {
  const byHash = new Map<Hash, Kept>();
  const chains = new Map<string, Map<number, Hash[]>>();
  const linked: Kept[] = [];

  return {
    find: (hash: string): Kept | undefined => byHash.get(hash as Hash),
    /** false where the entry was known */
    add(kept: Kept): boolean {
      if (byHash.has(kept.hash)) return false;
      byHash.set(kept.hash, kept);
      const { device, sequence, seen } = kept.entry;
      if (seen) linked.push(kept);
      const chain = chains.get(device) ?? new Map<number, Hash[]>();
      chains.set(device, chain);
      const there = chain.get(sequence);
      if (there) there.push(kept.hash);
      else chain.set(sequence, [kept.hash]);
      return true;
    },
    size: () => byHash.size,
    devices: () => [...chains.keys()].sort(),
    found(): Found[] {
      const forks = [...chains].flatMap(([device, chain]) =>
        [...chain]
          .filter(([, hashes]) => hashes.length > 1)
          .map(([sequence, hashes]) => ({ sequence, hashes: [...hashes].sort() }))
          .map(({ sequence, hashes }) => ({
            id: `device-forked:${device}:${sequence}`,
            notice: notice('device-forked', { device, sequence }),
            entry: hashes[0]!,
          })),
      );
      const behind = linked.flatMap(({ hash, entry }) => {
        const known = Math.max(-1, ...(entry.seen ?? []).map((one) => byHash.get(one as Hash)?.entry.counter ?? -1));
        return known >= entry.counter ? [foundIn(hash, notice('counter-behind', { counter: entry.counter, known }))] : [];
      });
      return [...forks, ...behind].sort((a, b) => (a.id < b.id ? -1 : 1));
    },
  };
}
