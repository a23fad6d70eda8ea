import { type Job, type JointPlan, type StillDoes, stillDoes, usableEnergy } from '@clampwright/core';
import type { BatteryDraft } from '@clampwright/record';

/** Bolts that the battery in the tool still does: by its gauge since it went in, and what a bolt of this joint draws. Unknown without either. */
export function batteryLeft(
  { battery, readings, firstReading, boltsSinceChange }: BatteryDraft,
  job: Job | undefined,
  { work }: JointPlan,
): StillDoes | undefined {
  const rated = job?.batteries?.find(({ serial }) => serial === battery);
  const seen = readings.slice(firstReading).flatMap(({ bars, of, pulls }) => (of === 4 ? [{ lit: bars, pulls }] : []));
  if (!rated || work?.draw === undefined || seen.length === 0) return undefined;
  // what its label promises today; the gauge says how much of it is in
  const full = usableEnergy({ ...rated, lit: 4 });
  const left = full.ok ? stillDoes(full.value, work.draw / work.pulls, seen, boltsSinceChange) : full;
  return left.ok ? left.value : undefined;
}
