import { type Notice, notice } from '@clampwright/core';
import type { Hash } from '../bytes/hash.ts';
import type { SignedHead } from '../chain/head.ts';
import type { Envelope } from '../entry/envelope.ts';

type Link = Pick<Envelope, 'device' | 'sequence' | 'previous' | 'counter'>;

interface Chain {
  /** ends of the chain: one, unless the device was copied or set back */
  readonly tips: { sequence: number; hash: Hash; counter: number; unsigned: number }[];
  entries: number;
  forked: boolean;
}

/** Holds entries against the chains of their devices, and signed heads against entries, as they come by. */
export interface ChainCheck {
  readonly head: (head: SignedHead, at: number) => void;
  /** what breaks the chain, where it is broken */
  readonly entry: (link: Link, hash: Hash, at: number) => Notice | undefined;
  readonly unmatchedHead: () => { readonly at: number; readonly device: string; readonly sequence: number } | undefined;
  /** entries that follow on one that is no end of a chain any more: to be found by a second reading */
  readonly pending: () => ReadonlyMap<string, { readonly at: number; readonly device: string; readonly sequence: number }>;
  readonly parent: (link: Link, hash: Hash, at: number) => void;
  readonly devices: () => { device: string; entries: number; unsigned: number; forked: boolean }[];
}

export function openChainCheck(): ChainCheck {
  const chains = new Map<string, Chain>();
  const heads = new Map<string, { at: number; device: string; sequence: number }>();
  const pending = new Map<string, { at: number; device: string; sequence: number; counter: number }>();
  const nameOf = (device: string, sequence: number, hash: string) => `${device} ${sequence} ${hash}`;

  return {
    head: ({ device, sequence, hash }, at) => {
      heads.set(nameOf(device, sequence, hash), { at, device, sequence });
    },
    entry: ({ device, sequence, previous, counter }, hash, at) => {
      const chain: Chain = chains.get(device) ?? { tips: [], entries: 0, forked: false };
      chains.set(device, chain);
      chain.entries += 1;
      const signed = heads.delete(nameOf(device, sequence, hash));
      const tip = chain.tips.find((one) => one.hash === previous);
      if (tip) {
        if (tip.sequence !== sequence - 1) return notice('chain-has-a-gap', { device, sequence });
        if (counter <= tip.counter) return notice('chain-counter-falls', { device, sequence });
        Object.assign(tip, { sequence, hash, counter, unsigned: signed ? 0 : tip.unsigned + 1 });
        return undefined;
      }
      if (chain.tips.length > 0) chain.forked = true;
      else if (previous !== undefined) return notice('chain-has-a-gap', { device, sequence });
      if (previous !== undefined) pending.set(nameOf(device, sequence - 1, previous), { at, device, sequence, counter });
      chain.tips.push({ sequence, hash, counter, unsigned: signed ? 0 : 1 });
      return undefined;
    },
    unmatchedHead: () => heads.values().next().value,
    pending: () => pending,
    parent: ({ device, sequence, counter }, hash, at) => {
      const name = nameOf(device, sequence, hash);
      const child = pending.get(name);
      // a parent stands before its child, and counts less
      if (child && at < child.at && counter < child.counter) pending.delete(name);
    },
    devices: () =>
      [...chains]
        .map(([device, { tips, entries, forked }]) => ({
          device,
          entries,
          forked,
          unsigned: tips.reduce((sum, { unsigned }) => sum + unsigned, 0),
        }))
        .sort((a, b) => (a.device < b.device ? -1 : 1)),
  };
}
