import { notice } from '../notice/index.ts';
import { length as lengthOf } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

/**
 * Does the bolt stand out of the nut by at least one thread pitch after tightening? Source: EN 1090-2:2018 clause 8.2.2.
 *
 * @example
 * expect(protrusionIsEnough(mm(2.5), mm(2.5))).toBe(true);
 */
export const protrusionIsEnough = (protrusion: Millimetre, pitch: Millimetre): boolean => protrusion >= pitch;

export type BoltSystem = 'HR' | 'HRC' | 'HV' | 'non-preloaded';

/** Full threads that must stay clear between nut and shank, besides the run-out. HV follows its clamp lengths instead. */
const CLEAR_THREADS: Readonly<Record<Exclude<BoltSystem, 'HV'>, number>> = { HR: 4, HRC: 4, 'non-preloaded': 1 };

/**
 * Are there enough full threads between the bearing face of the nut and the unthreaded shank?
 * HR (EN 14399-3, -7) and HRC (-10): four; non-preloaded: one. Source: EN 1090-2:2018 clause 8.2.2.
 *
 * @example
 * expect(clearThreadsAreEnough('HR', 3.5)).toBe(false);
 */
export const clearThreadsAreEnough = (system: Exclude<BoltSystem, 'HV'>, threads: number): boolean => threads >= CLEAR_THREADS[system];

/**
 * Structural bolts are M12 at least, unless the specification says otherwise. Source: EN 1090-2:2018 clause 8.2.2.
 *
 * @example
 * expect(isStructuralDiameter(mm(10))).toBe(false);
 */
export const isStructuralDiameter = (diameter: Millimetre): boolean => diameter >= 12;

export const hvClampSource: Source = { standard: 'EN 14399-4', edition: '2015', clause: 'annex A', provenance: 'memory' };

/** Shortest and longest HV bolt of each size, and the largest clamp length of the shortest one, both washers counted, mm. */
const HV_LENGTHS: readonly (readonly [d: number, shortest: number, longest: number, clampMax: number])[] = [
  [12, 35, 95, 21],
  [16, 40, 130, 22],
  [20, 45, 155, 23],
  [22, 50, 165, 27],
  [24, 60, 195, 34],
  [27, 70, 200, 41],
  [30, 75, 200, 44],
  [36, 85, 200, 48],
];
/** Lengths go in steps of 5 mm, and so does the clamp length: each length covers a span of 5 mm. */
const STEP = 5;

export interface ClampRange {
  readonly min: Millimetre;
  readonly max: Millimetre;
}

/**
 * Clamp lengths an HV bolt is made for, both washers counted, mm.
 *
 *     Σt_max = Σt_max(shortest) + (l − l_shortest)      Σt_min = Σt_max − 5
 *
 * Source: EN 14399-4:2015 annex A, from memory: the first line of each size, the rest by the 5 mm step of the table. Confirm before ordering.
 *
 * @example
 * expect(hvClampRange(mm(24), mm(100)).value).toEqual({ min: 69, max: 74 });
 */
export function hvClampRange(diameter: Millimetre, length: Millimetre): Outcome<ClampRange> {
  const row = HV_LENGTHS.find(([d]) => d === diameter);
  if (!row) return refused(notice('hexagon-unknown', { product: 'HV', size: `M${diameter}` }));
  const [, shortest, longest, clampMax] = row;
  if (length < shortest || length > longest || (length - shortest) % STEP !== 0)
    return refused(notice('length-not-listed', { product: 'HV', size: `M${diameter}`, boltLength: lengthOf(length) }));
  const max = clampMax + length - shortest;
  return done({ min: mm(max - STEP), max: mm(max) });
}
