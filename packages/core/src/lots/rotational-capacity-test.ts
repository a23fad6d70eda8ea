import { type Notice, notice } from '../notice/index.ts';
import { force, torque as torqueMeasure } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, N, type Newton, type NewtonMillimetre } from '../quantity.ts';
import {
  greatestShortBoltTorque,
  greatestTestTorque,
  passesRotationalCapacity,
  ROTATIONAL_CAPACITY_ASSEMBLIES,
  turnTestTension,
} from '../rcsc/rotational-capacity.ts';

/** One assembly of the test: torque and tension while the nut moved at the minimum pretension or above, and what was left after the full turn. */
export interface CapacityAssembly {
  readonly torque: NewtonMillimetre;
  /** absent on bolts too short for the calibrator */
  readonly tension?: Newton;
  readonly tensionAfterTurn?: Newton;
  /** stripped, broken, or not to be run off by hand afterwards */
  readonly damaged: boolean;
}

/** One combination of bolt, nut and washer lots. */
export interface CapacityTest {
  readonly lot: string;
  readonly minimum: Newton;
  readonly diameter: Millimetre;
  readonly assemblies: readonly CapacityAssembly[];
}

/**
 * Rotational-capacity test of one combination of lots: torque within its limit, tension left after the turn, nothing stripped or broken. Any
 * one failure rejects the combination.
 *
 * Long bolts: T ≤ 0.25·P·D at the measured tension and 1.15·T_m left; bolts too short for the calibrator: the torque limit alone. Refuses
 * fewer than two assemblies and readings that are not above zero, all at once. Source: FHWA/AASHTO rotational-capacity test, 2005.
 *
 * @example
 * const assembly = { torque: lbfFt(560), tension: kip(41), tensionAfterTurn: kip(46), damaged: false };
 * const test = { lot: 'B1/N1/W1', minimum: kip(39), diameter: inch(7 / 8), assemblies: [assembly, assembly] };
 * expect(judgeRotationalCapacity(test).value.passed).toBe(true);
 */
export function judgeRotationalCapacity({
  lot,
  minimum,
  diameter,
  assemblies,
}: CapacityTest): Outcome<{ readonly passed: boolean; readonly notices: readonly Notice[] }> {
  const faults: Notice[] = [];
  const wanted = ROTATIONAL_CAPACITY_ASSEMBLIES;
  if (assemblies.length < wanted) faults.push(notice('lot-test-few', { lot, found: assemblies.length, wanted }));
  if (!(minimum > 0) || !(diameter > 0)) faults.push(notice('lot-test-size', { lot }));
  for (const [at, { torque, tension, tensionAfterTurn }] of assemblies.entries()) {
    const readings = [torque, tension, tensionAfterTurn];
    if (readings.some((one) => one !== undefined && !(one > 0))) faults.push(notice('lot-test-reading', { lot, assembly: at + 1 }));
  }
  if (faults.length > 0) return refused(...faults);
  const notices = assemblies.flatMap((assembly, at) => assemblyNotices(lot, at + 1, assembly, minimum, diameter));
  return done({ passed: notices.length === 0, notices });
}

function assemblyNotices(
  lot: string,
  assembly: number,
  { torque, tension, tensionAfterTurn, damaged }: CapacityAssembly,
  minimum: Newton,
  diameter: Millimetre,
): Notice[] {
  const needed = turnTestTension(minimum);
  const limit = tension === undefined ? greatestShortBoltTorque(needed, diameter) : greatestTestTorque(tension, diameter);
  const left = tension === undefined ? undefined : { reached: tensionAfterTurn ?? N(0), needed };
  if (passesRotationalCapacity({ torque, torqueLimit: limit, damaged, ...(left ? { tension: left } : {}) })) return [];
  return [
    ...(torque > limit ? [notice('lot-torque-high', { lot, assembly, found: torqueMeasure(torque), limit: torqueMeasure(limit) })] : []),
    ...(left && left.reached < needed ? [notice('lot-force-low', { lot, found: force(left.reached), wanted: force(needed) })] : []),
    ...(damaged ? [notice('lot-damaged', { lot, assembly })] : []),
  ];
}
