import { inDegrees, type Radian } from '../quantity.ts';

export type ExecutionClass = 'EXC1' | 'EXC2' | 'EXC3' | 'EXC4';

/** Inspection of tightening: asked for from EXC2 up. EN 1090-2:2018 12.5.2.1. */
export const inspectionIs = (executionClass: ExecutionClass): 'mandatory' | 'recommended' =>
  executionClass === 'EXC1' ? 'recommended' : 'mandatory';

/** Share of the assemblies looked at, by class and step. EN 1090-2:2018 12.5.2 (from memory): rounded up to whole assemblies. */
const SHARE: Readonly<Record<'first' | 'second', Readonly<Record<ExecutionClass, number>>>> = {
  first: { EXC1: 0, EXC2: 0, EXC3: 0.05, EXC4: 0.05 },
  second: { EXC1: 0, EXC2: 0.05, EXC3: 0.1, EXC4: 0.1 },
};

/**
 * How many assemblies of a population are inspected. HRC bolts are all looked at.
 *
 * @example
 * expect(inspectionSample('EXC3', 'torque', 'second', 200)).toBe(20);
 */
export function inspectionSample(
  executionClass: ExecutionClass,
  method: 'torque' | 'combined' | 'HRC' | 'DTI',
  step: 'first' | 'second',
  population: number,
): number {
  if (method === 'HRC') return population;
  return Math.ceil(SHARE[step][executionClass] * population - 1e-9);
}

/** Sequential plan by class, and its sample limits. EN 1090-2:2018 annex M (from memory, low confidence). */
export const sequentialType = (executionClass: ExecutionClass): 'A' | 'B' => (executionClass === 'EXC4' ? 'B' : 'A');
export const SEQUENTIAL_LIMITS: Readonly<Record<'A' | 'B', { readonly least: number; readonly most: number }>> = {
  A: { least: 5, most: 16 },
  B: { least: 14, most: 40 },
};

/** Torque check: 12 h to 72 h after the group is finished. EN 1090-2:2018 12.5.2.4. */
export const withinInspectionWindow = (hours: number): boolean => hours >= 12 && hours <= 72;

/** Torque at which a nut starts to turn on, over the specified one: less than this is under-tightened. EN 1090-2:2018 12.5.2.4 (from memory). */
export const CONTROL_RATIO = 1.05;

/**
 * Torque check by the torque at which the nut starts to turn on.
 *
 * @example
 * expect(startingTorqueVerdict(1.05)).toBe('pass');
 * expect(startingTorqueVerdict(1.02)).toBe('fail');
 */
export const startingTorqueVerdict = (ratio: number, required: number = CONTROL_RATIO): 'pass' | 'fail' =>
  ratio >= required - 1e-9 ? 'pass' : 'fail';

/** At the control torque a nut that turns by more than 15° was under-tightened. EN 1090-2:2018 12.5.2.4. */
export const controlTorqueVerdict = (rotation: Radian): 'conform' | 'under-tightened' =>
  inDegrees(rotation) <= 15 + 1e-9 ? 'conform' : 'under-tightened';

/** Match-marks after the second step: more than 15° short is turned further, more than 30° over is replaced. EN 1090-2:2018 12.5.2.5 (from memory). */
export function angleVerdict(deviation: Radian): 'accept' | 'correct-angle' | 'replace' {
  const degrees = inDegrees(deviation);
  if (degrees < -15 - 1e-9) return 'correct-angle';
  return degrees > 30 + 1e-9 ? 'replace' : 'accept';
}

/** HRC: the sheared spline is the sign. EN 1090-2:2018 12.5.2.6. */
export const splineVerdict = (sheared: boolean): 'fully-tightened' | 'under-tightened' => (sheared ? 'fully-tightened' : 'under-tightened');

/** DTI: more than half of the gaps refuse the feeler; at most 10 % of the group fully flat. EN 1090-2:2018 annex J (from memory). */
export const leastFeelerRefusals = (protrusions: number): number => Math.floor(protrusions / 2) + 1;
export const fullCompressionAllowed = (indicators: number, fullyCompressed: number): boolean => fullyCompressed <= 0.1 * indicators + 1e-9;

/** What a rejected sample triggers. EN 1090-2:2018 12.5.2 and annex M (from memory). */
export const ACTION_ON_REJECT = {
  A: 'check-all-in-subgroup-or-extend-to-type-B',
  B: 'check-all-in-subgroup',
  torque: 'check-tightening-wrench-accuracy',
} as const;

/** German check by further turning: below 30° sufficient, to 60° conditional (two neighbours), above insufficient. DIN 18800-7. */
export function furtherTurningVerdict(rotation: Radian): 'sufficient' | 'conditional' | 'insufficient' {
  const degrees = inDegrees(rotation);
  if (degrees < 30 - 1e-9) return 'sufficient';
  return degrees <= 60 + 1e-9 ? 'conditional' : 'insufficient';
}
