import type { NewtonMillimetre } from '../quantity.ts';

/**
 * Relative deviation of a torque tool, referred to the reference reading: a_s = (x_a − x_r)/x_r.
 *
 * - x_a set or indicated torque; x_r what the reference shows
 *
 * Positive: the tool delivers less than it says, and under-tightens. Source: ISO 6789-1 and -2:2017 (from memory).
 *
 * @example
 * expect(100 * relativeDeviation(Nm(800), Nm(776))).toBeCloseTo(3.0928, 4);
 */
export const relativeDeviation = (indicated: NewtonMillimetre, reference: NewtonMillimetre): number => (indicated - reference) / reference;

/** Does a deviation lie within a limit, both as shares? On the limit counts as within. */
export const withinLimit = (deviation: number, limit: number): boolean => Math.abs(deviation) <= limit + 1e-12;
