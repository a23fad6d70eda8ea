import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { degrees, type Millimetre, mm, type NewtonMillimetre, Nmm, type Radian } from '../quantity.ts';
import { rcscSource } from './editions.ts';

/** Arbitration is for a dispute, not for routine inspection. RCSC 2014 section 10. */
export const ARBITRATION = {
  /** assemblies of the lot, tightened to the minimum pretension in a tension calibrator */
  assemblies: 5,
  /** further turn in the tightening direction at which the torque is read */
  rotation: degrees(5),
  /** share of the bolts of a connection to try, and how many at least */
  share: 0.1,
  least: 2,
  source: rcscSource('2014', '10'),
} as const;

/**
 * Arbitration torque from the five readings: highest and lowest left out, mean of the other three.
 *
 * Source: RCSC 2014 section 10 (from memory).
 *
 * @example
 * expect(inLbfFt(arbitrationTorque([412, 438, 455, 447, 520].map(lbfFt)).value)).toBeCloseTo(446.67, 2);
 */
export function arbitrationTorque(readings: readonly NewtonMillimetre[]): Outcome<NewtonMillimetre> {
  const { assemblies } = ARBITRATION;
  if (readings.length !== assemblies) return refused(notice('readings-wrong', { wanted: assemblies, found: readings.length }));
  const kept = [...readings].sort((a, b) => a - b).slice(1, -1);
  return done(Nmm(kept.reduce((sum, one) => sum + one, 0) / kept.length));
}

/**
 * Bolts of a connection to try at the arbitration torque: a tenth rounded up, at least two, never more than there are.
 * If one moves, all of the connection are tried.
 *
 * @example
 * expect([47, 8, 1].map(boltsToArbitrate)).toEqual([5, 2, 1]);
 */
export const boltsToArbitrate = (bolts: number): number =>
  Math.min(bolts, Math.max(ARBITRATION.least, Math.ceil(ARBITRATION.share * bolts - 1e-9)));

/**
 * Arc of a turn at a radius: s = r·θ, mm. Five degrees at 12 in are about an inch.
 *
 * @example
 * expect(inInch(arcOf(degrees(5), inch(12)))).toBeCloseTo(1.047, 3);
 */
export const arcOf = (turn: Radian, radius: Millimetre): Millimetre => mm(radius * turn);
