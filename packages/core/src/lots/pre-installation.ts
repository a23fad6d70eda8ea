import { type Notice, notice } from '../notice/index.ts';
import { force } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { N, type Newton, type NewtonMillimetre, Nmm } from '../quantity.ts';
import { VERIFICATION_ASSEMBLIES, VERIFICATION_FACTOR } from '../rcsc/verification-tension.ts';
import { sampleMean } from '../scatter/sample.ts';

/** One assembly of an RCSC pre-installation verification: tension it reached by the method of the work. */
export interface PreInstallation {
  readonly lot: string;
  readonly minimum: Newton;
  readonly tensions: readonly Newton[];
  /** torque of the calibrated wrench, where that is the method */
  readonly torques?: readonly NewtonMillimetre[];
}

/**
 * Pre-installation verification: each of three assemblies reaches 1.05 times the minimum pretension by the method of the work; a table's
 * torque does not take its place. The calibrated wrench is set to the mean of the torques found.
 *
 * Source: RCSC 2014 and 2020, 7.1 and 8.2.2 (from memory).
 */
export function judgePreInstallation({ lot, minimum, tensions, torques = [] }: PreInstallation): Outcome<{
  readonly passed: boolean;
  readonly torque?: NewtonMillimetre;
  readonly notices: readonly Notice[];
}> {
  const faults: Notice[] = [];
  if (tensions.length < VERIFICATION_ASSEMBLIES)
    faults.push(notice('lot-test-few', { lot, found: tensions.length, wanted: VERIFICATION_ASSEMBLIES }));
  for (const [at, tension] of tensions.entries()) if (!(tension > 0)) faults.push(notice('lot-test-reading', { lot, assembly: at + 1 }));
  if (faults.length > 0) return refused(...faults);
  const wanted = N(VERIFICATION_FACTOR * minimum);
  const weakest = N(Math.min(...tensions));
  const passed = weakest >= wanted - 1e-6;
  return done({
    passed,
    ...(passed && torques.length > 0 ? { torque: Nmm(sampleMean(torques)) } : {}),
    notices: passed ? [] : [notice('lot-force-low', { lot, found: force(weakest), wanted: force(wanted) })],
  });
}
