import { inKip, kip, N, type Newton } from '../quantity.ts';

/** Tension the pre-installation verification must show, as a multiple of the minimum pretension. RCSC 2014 7.1. */
export const VERIFICATION_FACTOR = 1.05;
/** Assemblies of each combination of diameter, length, grade and lot to verify. RCSC 2014 7.1. */
export const VERIFICATION_ASSEMBLIES = 3;
/** How often a calibrated wrench is verified, at least: each work day, and after any change of lot, lubrication, hose, air supply or wrench. RCSC 2014 8.2.2. */
export const WRENCH_VERIFICATIONS_PER_WORK_DAY = 1;

/**
 * Tension each assembly must reach in the pre-installation verification: 1.05·T_m to the nearest kip.
 *
 * Source: RCSC 2014 Table 7.1.
 *
 * @example
 * expect(inKip(verificationTension(kip(28)))).toBeCloseTo(29, 6);
 */
export const verificationTension = (minimum: Newton): Newton => kip(Math.round(inKip(N(VERIFICATION_FACTOR * minimum))));
