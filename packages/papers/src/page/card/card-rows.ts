import type { JointPlan, StepPlan } from '@clampwright/core';
import { endText, type UnitSystem } from '@clampwright/words';
import { aimText, bigText } from '../final-step.ts';

/** What some bolts get in a step. */
interface CardSetting {
  readonly positions: readonly number[];
  readonly step: StepPlan;
}

/** One step of the whole joint, in working order: every subgroup gets it before any gets the next. */
export interface CardRow {
  readonly number: number;
  readonly name: StepPlan['name'];
  readonly order: StepPlan['order'];
  /** one entry where all bolts get the same */
  readonly settings: readonly CardSetting[];
}

export function cardRows({ subgroups }: JointPlan, units: UnitSystem): CardRow[] {
  const names = [...new Set(subgroups.flatMap(({ tightening }) => tightening?.steps.map(({ name }) => name) ?? []))];
  return names.map((name, at) => {
    const same = new Map<string, CardSetting>();
    for (const { positions, tightening } of subgroups) {
      const step = tightening?.steps.find((one) => one.name === name);
      if (!step) continue;
      const key = [bigText(step, units), step.torque ? aimText(step, units) : '', endText(step.end, units), step.setting?.tool ?? ''].join(
        '\n',
      );
      const known = same.get(key);
      same.set(key, { step, positions: known ? [...known.positions, ...positions] : positions });
    }
    const settings = [...same.values()];
    return { number: at + 1, name, order: settings[0]!.step.order, settings };
  });
}
