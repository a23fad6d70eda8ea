import type { StepPlan, SubgroupPlan } from '@clampwright/core';
import { endText, settingLine, type UnitSystem } from '@clampwright/words';
import { spoken } from './spoken.ts';

/** The step that brings the bolt to its preload; later rounds only confirm it. */
export const finalStep = (subgroup: SubgroupPlan): StepPlan | undefined =>
  subgroup.tightening?.steps.findLast(({ name }) => name !== 'circular round' && name !== 're-check');

/** Torque or angle of a step, as far as it has one. */
export function aimText(step: StepPlan, units: UnitSystem): string {
  if (step.end.kind === 'mark at angle') return spoken(units).angle(step.end.angle);
  const torque = step.setting?.torque ?? step.torque?.wanted;
  return torque === undefined ? endText(step.end, units) : spoken(units).torque(torque);
}

/** What stands largest: the setting; the angle where the step ends at a mark. */
export const bigText = (step: StepPlan, units: UnitSystem): string =>
  step.end.kind === 'mark at angle' ? spoken(units).angle(step.end.angle) : settingLine(step);
