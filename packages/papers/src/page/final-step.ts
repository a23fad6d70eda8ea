import type { StepPlan, SubgroupPlan } from '@clampwright/core';
import { ENGLISH_WORDS, type UnitSystem, type Words } from '@clampwright/words';
import { spoken } from './spoken.ts';

/** The step that brings the bolt to its preload; later rounds only confirm it. */
export const finalStep = (subgroup: SubgroupPlan): StepPlan | undefined =>
  subgroup.tightening?.steps.findLast(({ name }) => name !== 'circular round' && name !== 're-check');

/** Torque or angle of a step, as far as it has one. */
export function aimText(step: StepPlan, units: UnitSystem, words: Words = ENGLISH_WORDS): string {
  if (step.end.kind === 'mark at angle') return spoken(units, words).angle(step.end.angle);
  const torque = step.setting?.torque ?? step.torque?.wanted;
  return torque === undefined ? words.end(step.end, units) : spoken(units, words).torque(torque);
}

/** What stands largest: the setting; the angle where the step ends at a mark. */
export const bigText = (step: StepPlan, units: UnitSystem, words: Words = ENGLISH_WORDS): string =>
  step.end.kind === 'mark at angle' ? spoken(units, words).angle(step.end.angle) : words.setting(step);
