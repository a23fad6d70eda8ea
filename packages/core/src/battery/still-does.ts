import { done, type Outcome, refused } from '../outcome.ts';
import { learntFromDrop } from './learn.ts';
import { boltsRemaining, type DrawBelief } from './remaining.ts';

/** What is not known of the mean draw, and how pulls differ, as shares of it, before a gauge has dropped. Own estimates: efficiencies run from 0.25 to 0.6. */
const UNLEARNT = { mean: 0.25, pull: 0.1 } as const;

/** What is believed of the draw of one pull, J, before a gauge has taught anything. */
export const unlearntDraw = (mean: number): DrawBelief => ({
  mean,
  meanDeviation: UNLEARNT.mean * mean,
  boltDeviation: UNLEARNT.pull * mean,
});

/** What a gauge of four showed, and how many pulls this charge had done by then. */
export interface GaugeSeen {
  readonly lit: number;
  readonly pulls: number;
}

export interface StillDoes {
  /** pulls it does with 90 % confidence: what the stop rule goes by */
  readonly sure: number;
  readonly median: number;
  /** drops of the gauge that taught the draw; 0: as planned */
  readonly drops: number;
}

/**
 * Pulls a charge still does: by its gauge as last read, the pulls since, and the draw that drops of one segment have taught.
 *
 * `full`: usable energy when full, J; `draw`: planned draw of one pull, J; `seen`: readings of this charge in their order, at least one, each
 * taken when a segment went out; `pulls`: done by now. Refuses what {@link boltsRemaining} and {@link learntFromDrop} refuse.
 *
 * @example
 * expect(stillDoes(291_600, 1900, [{ lit: 4, pulls: 0 }], 10).value).toEqual({ sure: 89, median: 124, drops: 0 });
 * expect(stillDoes(291_600, 1900, [{ lit: 4, pulls: 0 }, { lit: 3, pulls: 30 }, { lit: 2, pulls: 66 }], 70).value.drops).toBe(1);
 */
export function stillDoes(full: number, draw: number, seen: readonly GaugeSeen[], pulls: number): Outcome<StillDoes> {
  let belief = unlearntDraw(draw);
  let drops = 0;
  // from one drop to the next; where the first segment began nobody knows
  for (const [at, { lit, pulls: by }] of seen.entries()) {
    const [before, first] = [seen[at - 1], seen[at - 2]];
    if (!before || !first || first.lit - before.lit !== 1 || before.lit - lit !== 1 || by <= before.pulls) continue;
    const taught = learntFromDrop(belief, full, by - before.pulls);
    if (!taught.ok) return refused(...taught.notices);
    belief = taught.value;
    drops += 1;
  }
  const last = seen.at(-1)!;
  const left = boltsRemaining(full, last.lit, belief);
  if (!left.ok) return refused(...left.notices);
  const since = pulls - last.pulls;
  return done({ sure: Math.max(0, left.value.sure - since), median: Math.max(0, left.value.median - since), drops });
}
