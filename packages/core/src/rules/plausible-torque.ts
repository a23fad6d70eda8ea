import { type Notice, notice } from '../notice/index.ts';
import { torque as torqueMeasure } from '../notice/measure.ts';
import { inNewtonMetre, lbfFt, type Newton, type NewtonMillimetre } from '../quantity.ts';
import type { ThreadSize } from '../torque/thread-arm.ts';
import { torqueArm } from '../torque/tightening-torque.ts';
import type { BoltUnderRule } from './rule-set.ts';
import { yieldCeiling } from './shared.ts';

/** Nut factors that assemblies show, from the slipperiest paste to dry stainless: outside, a figure is a slip. Own limits, no source. */
export const PLAUSIBLE_NUT_FACTOR = { low: 0.08, high: 0.35 } as const;
/** 1 lbf·ft in N·m. */
const OTHER_UNIT = inNewtonMetre(lbfFt(1));

const isPlausible = (k: number) => k >= PLAUSIBLE_NUT_FACTOR.low && k <= PLAUSIBLE_NUT_FACTOR.high;
const shown = (k: number) => String(Number(k.toPrecision(2)));

/**
 * What speaks against a torque that is said to give a preload; nothing where the two fit.
 *
 *     k = T/(F·d), expected within 0.08 to 0.35
 *
 * Where k lies outside and T·1.356 or T/1.356 would bring it inside, N·m and lbf·ft have probably been taken for each other.
 *
 * @example
 * const m24 = { diameter: mm(24), pitch: mm(3) };
 * expect(torqueDoubts(Nm(771), kN(247.1), m24)).toEqual([]);
 * expect(torqueDoubts(Nm(460), kN(247.1), m24)[0].code).toBe('torque-unit-doubt');
 * expect(torqueDoubts(Nm(7710), kN(247.1), m24)[0].code).toBe('torque-implausible');
 */
export function torqueDoubts(torque: NewtonMillimetre, preload: Newton, { diameter }: Pick<ThreadSize, 'diameter'>): Notice[] {
  const k = torque / (preload * diameter);
  if (isPlausible(k)) return [];
  const code = isPlausible(k * OTHER_UNIT) || isPlausible(k / OTHER_UNIT) ? 'torque-unit-doubt' : 'torque-implausible';
  return [notice(code, { torque: torqueMeasure(torque), k: shown(k), basis: 'preload' })];
}

/** What speaks against a torque whose preload follows from the friction given: it would turn the bolt beyond yield. */
export function yieldDoubts(torque: NewtonMillimetre, bolt: BoltUnderRule): Notice[] {
  const ceiling = yieldCeiling(bolt);
  if (!bolt.friction || !ceiling) return [];
  const arm = torqueArm(bolt.friction, bolt.thread);
  if (torque / arm <= ceiling.value) return [];
  const code = torque / OTHER_UNIT / arm <= ceiling.value ? 'torque-unit-doubt' : 'torque-implausible';
  return [notice(code, { torque: torqueMeasure(torque), k: shown(arm / bolt.thread.diameter), basis: 'yield' })];
}
