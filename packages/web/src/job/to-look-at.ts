import type { JointPlan } from '@clampwright/core';
import type { JointDraft } from '@clampwright/record';

export interface ToLookAt {
  /** the next bolt; undefined when all have been looked at */
  readonly next: number | undefined;
  readonly failed: readonly number[];
  /** a bolt of the sample failed: every bolt of its subgroup is looked at */
  readonly extended: readonly number[];
}

/**
 * What an inspector still has to look at: the drawn sample, and where a bolt of it failed, all others of its subgroup. Source: what a
 * rejected sample triggers, EN 1090-2:2018 12.5.2 and annex M (from memory); taken for every rule set that draws a sample.
 */
export function toLookAt({ bolts }: JointDraft, { subgroups }: JointPlan, sample: readonly number[]): ToLookAt {
  const last = (bolt: number) => bolts.get(bolt)?.inspections.at(-1);
  const open = (bolt: number) => last(bolt) === undefined;
  const isFailed = (bolt: number) => last(bolt)?.passed === false;
  const rejected = sample.some(open)
    ? []
    : subgroups.filter(({ positions }) => positions.some((bolt) => sample.includes(bolt) && isFailed(bolt)));
  const extended = rejected.flatMap(({ positions }) => positions.filter((bolt) => !sample.includes(bolt)));
  const all = [...sample, ...extended];
  return { next: all.find(open), failed: all.filter(isFailed), extended };
}
