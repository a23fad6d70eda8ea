import { done, type Outcome, refused } from '../outcome.ts';
import type { Newton } from '../quantity.ts';
import { type RcscEdition, rcscSource } from '../rcsc/editions.ts';
import { minimumPretension } from '../rcsc/minimum-pretension.ts';
import type { Cited } from '../source.ts';
import type { BoltUnderRule, Step, Tightening } from './rule-set.ts';
import { snug } from './shared.ts';

/** Editions the rule sets are written for. */
export const RCSC_RULE_EDITIONS = ['2020', '2014'] as const;

export const editionOf = ({ edition }: BoltUnderRule): RcscEdition => edition as RcscEdition;

/** Minimum pretension of a bolt under the edition asked for; the engineer's own figure may only be larger. */
export function rcscTarget(bolt: BoltUnderRule): Outcome<Cited<Newton>> {
  const minimum = minimumPretension(bolt.grade.id, bolt.thread.diameter, editionOf(bolt));
  if (!minimum.ok) return refused(...minimum.notices);
  const { preload } = bolt.given;
  return preload !== undefined && preload > minimum.value.value
    ? done({ value: preload, source: { standard: 'engineer', provenance: 'engineer' } })
    : minimum;
}

/** What the four methods have in common: snug-tight first, never above what the method says, slackened A490 and galvanised bolts are scrap. */
export const rcscTightening = (
  bolt: BoltUnderRule,
  target: Cited<Newton>,
  steps: readonly Step[],
  own: Pick<Tightening, 'cautions'> & Partial<Pick<Tightening, 'friction'>>,
): Tightening => ({
  target,
  formula: 'T_m = 0.70 · S_ut · A_t, to the nearest kip',
  meaning: 'at least',
  steps: [snug(rcscSource(editionOf(bolt), '8.1')), ...steps],
  // the specification sets no upper limit on pretension; its methods bound themselves
  ceiling: null,
  aboveTarget: { allowed: false, source: rcscSource(editionOf(bolt), '8.2') },
  notices: [],
  ...own,
  cautions: [...own.cautions, 'as-delivered-lubricant', 'discard-slackened'],
});
