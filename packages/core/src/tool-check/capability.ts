import { sampleDeviation, sampleMean } from '../scatter/sample.ts';

/** Share of the mean that two, or six, standard deviations take. State with every ± which of them is meant. */
export const twoSigmaShare = (readings: readonly number[]): number => (2 * sampleDeviation(readings)) / sampleMean(readings);
export const sixSigmaShare = (readings: readonly number[]): number => 3 * twoSigmaShare(readings);

/** What is usually asked of a machine. Common practice, no source. */
export const USUAL_CAPABILITY = 1.67;

/** Capability of a tool about a target. */
export interface Capability {
  /** half the window over 3 s */
  readonly potential: number;
  /** nearer edge of the window over 3 s: bias counts */
  readonly actual: number;
}

/**
 * Machine capability of a series about a target with limits ± share:
 *
 *     C_m = limit·target/(3 s)      C_mk = (limit·target − |x̄ − target|)/(3 s)
 *
 * n ≥ 2; honest only for some tens of shots. Source: definition of the capability index (VDI/VDE 2645-2 names it for tools with a
 * controlled target, not for stall tools).
 *
 * @example
 * const { potential, actual } = capability([796, 803, 788, 810, 801], 800, 0.04);
 * expect(potential).toBeCloseTo(1.3002, 4);
 * expect(actual).toBeCloseTo(1.2840, 4);
 */
export function capability(readings: readonly number[], target: number, limit: number): Capability {
  const three = 3 * sampleDeviation(readings);
  const half = limit * target;
  return { potential: half / three, actual: (half - Math.abs(sampleMean(readings) - target)) / three };
}
