import { inNewtonMetre, type NewtonMillimetre } from '../quantity.ts';
import type { Source } from '../source.ts';

/** Types of ISO 6789: I indicating, II setting tools; the letter is the build. */
export const HAND_TOOL_TYPES = ['I-A', 'I-B', 'I-C', 'I-D', 'I-E', 'II-A', 'II-B', 'II-C', 'II-D', 'II-E', 'II-F', 'II-G'] as const;
export type HandToolType = (typeof HAND_TOOL_TYPES)[number];

export const ISO_6789: Source = { standard: 'ISO 6789-1', edition: '2017', provenance: 'memory' };

/** Torsion or bending bars, screwdrivers, and tools without graduation: the wide limit at every capacity. */
const WIDE: ReadonlySet<HandToolType> = new Set(['I-A', 'I-D', 'II-D', 'II-E', 'II-F']);
const SMALL = 10;

/**
 * Maximum permissible relative deviation of a hand torque tool, as a share of reading: 4 %, and 6 % up to 10 N·m and for the types whose
 * build cannot do better. Source: ISO 6789:2003 and ISO 6789-1:2017 (from memory).
 *
 * @example
 * expect(permissibleDeviation('II-A', Nm(200))).toBe(0.04);
 * expect(permissibleDeviation('II-A', Nm(10))).toBe(0.06);
 */
export const permissibleDeviation = (type: HandToolType, capacity: NewtonMillimetre): number =>
  WIDE.has(type) || inNewtonMetre(capacity) <= SMALL ? 0.06 : 0.04;

/** Turned against the clock a hand tool is asked for less. Source: laboratory page citing ISO 6789. */
export const HAND_TOOL_LIMIT = { clockwise: 0.04, counterClockwise: 0.06 } as const;

/** Accuracy the torque method of EN 1090-2:2018 asks of the tool, ± share of the value. */
export const TORQUE_METHOD_ACCURACY = 0.04;

/** Shares of the capacity at which a hand torque tool is tested. ISO 6789; the lowest marked value stands for 20 % where that is marked. */
export const TEST_POINTS = [0.2, 0.6, 1] as const;
export const isTestPoint = (share: number): boolean => TEST_POINTS.some((point) => Math.abs(point - share) < 1e-9);

/** What has happened to a tool since its calibration. */
export interface ToolUse {
  readonly cycles: number;
  readonly months?: number;
  /** greatest torque beyond its capacity, share */
  readonly overload?: number;
  readonly fallen?: boolean;
}

const INTERVAL = { cycles: 5000, months: 12, overload: 0.25 } as const;

/**
 * Is calibration due? After 5000 cycles or 12 months, whichever is first, and after an overload of a quarter or more, unless the owner's
 * own procedure says otherwise. A fall is looked into, whatever the count says.
 *
 * Source: ISO 6789-2:2017 4.1 (from memory); powered tools by analogy, the maker decides.
 *
 * @example
 * expect(calibrationDue({ cycles: 4999, months: 11 })).toBe(false);
 * expect(calibrationDue({ cycles: 1200, overload: 0.26 })).toBe(true);
 */
export const calibrationDue = ({ cycles, months = 0, overload = 0, fallen = false }: ToolUse): boolean =>
  cycles >= INTERVAL.cycles || months >= INTERVAL.months || overload >= INTERVAL.overload || fallen;

/**
 * Years until a tool's error meets a limit, if it goes on as it did: (limit − |e₂|)/(|e₂| − |e₁|) · years between. `undefined`: the error
 * does not grow. 0: it is there.
 *
 * @example
 * expect(yearsUntilLimit(0.005, 0.017, 1, 0.04)).toBeCloseTo(1.9167, 4);
 */
export function yearsUntilLimit(before: number, now: number, years: number, limit: number): number | undefined {
  const growth = (now - before) / years;
  const outwards = growth * Math.sign(now) > 0;
  if (Math.abs(now) >= limit) return 0;
  return outwards ? (limit - Math.abs(now)) / Math.abs(growth) : undefined;
}
