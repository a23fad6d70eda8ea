import {
  consistencyProof,
  type Hash,
  inclusionProof,
  leafHash,
  type Receipt,
  receiptBytes,
  type SubtreeHash,
  subtreeOf,
} from '@clampwright/record';
import type { Kysely } from 'kysely';
import type { Tables } from './tables.ts';

/** Leaves to a run. */
export const RUN = 256;

export interface Proofs {
  readonly inclusion: (job: string, index: number, size: number) => Promise<readonly Uint8Array[]>;
  readonly consistency: (job: string, first: number, second: number) => Promise<readonly Uint8Array[]>;
}

/** Proofs from the log: roots of whole runs where they serve, and the leaves of the few runs that a proof cuts through. */
export function openProofs(db: Kysely<Tables>): Proofs {
  const leavesOf = async (job: string, run: number, size: number): Promise<Uint8Array[]> => {
    const rows = await db
      .selectFrom('entry')
      .select(['place', 'hash', 'arrived'])
      .where('job', '=', job)
      .where('place', '>=', run * RUN)
      .where('place', '<', Math.min(size, (run + 1) * RUN))
      .orderBy('place')
      .execute();
    return rows.map(({ place, hash, arrived }) =>
      leafHash(receiptBytes({ job, index: place, entry: hash.toString('hex') as Hash, arrived } satisfies Receipt)),
    );
  };

  /** Subtree hashes of a log of `size` entries; the leaves of `runs` are read, of all others only the root. */
  const treeOf = async (job: string, size: number, runs: readonly number[]): Promise<SubtreeHash> => {
    const roots = await db
      .selectFrom('subtree')
      .select(['run', 'hash'])
      .where('job', '=', job)
      .where('run', '<', Math.floor(size / RUN))
      .orderBy('run')
      .execute();
    const whole = roots.map(({ hash }) => new Uint8Array(hash));
    const read = new Map<number, Uint8Array[]>();
    for (const run of new Set([...runs, Math.floor(size / RUN)])) read.set(run, await leavesOf(job, run, size));
    const leaves = subtreeOf((index) => read.get(Math.floor(index / RUN))![index % RUN]!);
    const tops = subtreeOf((run) => whole[run]!);
    return (start, end) => {
      if (start % RUN === 0 && end % RUN === 0) return tops(start / RUN, end / RUN);
      return end - start <= RUN ? leaves(start, end) : mixed(start, end);
    };
    // a subtree that ends inside the last run: whole runs to the left, the rest of the log to the right
    function mixed(start: number, end: number): Uint8Array {
      return subtreeOf((part) =>
        part * RUN + RUN <= end - start ? tops(start / RUN + part, start / RUN + part + 1) : leaves(start + part * RUN, end),
      )(0, Math.ceil((end - start) / RUN));
    }
  };

  return {
    inclusion: async (job, index, size) => inclusionProof(index, size, await treeOf(job, size, [Math.floor(index / RUN)])),
    consistency: async (job, first, second) =>
      consistencyProof(first, second, await treeOf(job, second, [Math.floor(first / RUN), Math.floor((first - 1) / RUN)])),
  };
}
