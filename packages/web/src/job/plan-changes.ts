import type { JointPlan, StepPlan } from '@clampwright/core';
import { planOf } from './next-bolt.ts';

/** What a crew does otherwise by a later card of the same joint. */
export interface PlanChanges {
  readonly steps: readonly { readonly step: string; readonly bolts: readonly number[]; readonly was?: StepPlan; readonly now?: StepPlan }[];
  readonly sequence: boolean;
  readonly datum: boolean;
}

/** What differs for the crew: what is set, how a step ends, the order, where bolt 1 is. */
export function planChanges(before: JointPlan, after: JointPlan): PlanChanges {
  const bolts = Array.from({ length: Math.max(before.boltCount, after.boltCount) }, (_, i) => i + 1);
  const names = [...new Set([before, after].flatMap(stepNames))];
  const steps = names.flatMap((step) => {
    const groups = new Map<string, { step: string; bolts: number[]; was?: StepPlan; now?: StepPlan }>();
    for (const bolt of bolts) {
      const [was, now] = [planOf(before, bolt, step), planOf(after, bolt, step)];
      if (shown(was) === shown(now)) continue;
      const key = `${shown(was)} ${shown(now)}`;
      const group = groups.get(key) ?? { step, bolts: [], ...(was ? { was } : {}), ...(now ? { now } : {}) };
      group.bolts.push(bolt);
      groups.set(key, group);
    }
    return [...groups.values()];
  });
  const same = (of: (plan: JointPlan) => unknown) => JSON.stringify(of(before)) === JSON.stringify(of(after));
  return { steps, sequence: !same(({ sequence }) => sequence.list), datum: !same(({ datum }) => datum) };
}

const stepNames = ({ subgroups }: JointPlan): string[] =>
  subgroups.flatMap(({ tightening }) => tightening?.steps.map(({ name }) => name) ?? []);

/** What a crew sees of a step. */
const shown = (step: StepPlan | undefined): string => JSON.stringify(step && [step.setting?.tool, step.setting?.text, step.end]);
