import type { Radian } from '../quantity.ts';
import { degrees } from '../quantity.ts';

/** Test joints of a rotary torque tool: rotation from 10 % to 100 % of the torque. ISO 5393 (from memory): the 30° and the 720° joint. */
export const TEST_JOINTS: Readonly<Record<'hard' | 'soft', Radian>> = { hard: degrees(27), soft: degrees(650) };
/** Shots on each joint. ISO 5393 (from memory). */
export const SHOTS = 25;

/** Mean and standard deviation on one joint. */
export interface Shots {
  readonly mean: number;
  readonly deviation: number;
}

/** How far the rate of the joint moves a tool. */
export interface JointShift {
  /** half-way between highest mean + 3s and lowest mean − 3s */
  readonly mean: number;
  /** highest mean + 3s less lowest mean − 3s */
  readonly scatter: number;
  /** hard less soft */
  readonly shift: number;
}

/**
 * Combined mean and scatter of a tool over hard and soft joints.
 *
 *     a = max(x̄ + 3s), b = min(x̄ − 3s);  mean (a + b)/2, scatter a − b, shift x̄_hard − x̄_soft
 *
 * A tool that is cut out overshoots on hard joints and may stall short on soft ones. Source: ISO 5393 (from memory).
 *
 * @example
 * const found = jointShift({ mean: 50.4, deviation: 0.5 }, { mean: 49.2, deviation: 0.4 });
 * expect(found.mean).toBeCloseTo(49.95, 6);
 * expect(found.scatter).toBeCloseTo(3.9, 6);
 */
export function jointShift(hard: Shots, soft: Shots): JointShift {
  const high = Math.max(hard.mean + 3 * hard.deviation, soft.mean + 3 * soft.deviation);
  const low = Math.min(hard.mean - 3 * hard.deviation, soft.mean - 3 * soft.deviation);
  return { mean: (high + low) / 2, scatter: high - low, shift: hard.mean - soft.mean };
}
