import { notice } from '../notice/index.ts';
import { length as lengthOf } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { degrees, inDegrees, type Millimetre, mm, type Radian } from '../quantity.ts';
import type { Cited } from '../source.ts';
import { type RcscEdition, rcscSource } from './editions.ts';

/** Bolt length as a multiple of the diameter, up to and including, and the turn from snug with both outer faces normal to the axis. */
export const TURN_BANDS = [
  { upTo: 4, turn: degrees(120) },
  { upTo: 8, turn: degrees(180) },
  { upTo: 12, turn: degrees(240) },
] as const;
/** Added for each outer face that slopes by up to 1:20. */
const PER_SLOPED_FACE = 60;

/**
 * Nut rotation from snug-tight of the turn-of-nut method.
 *
 * - L ≤ 4 d: 120°; ≤ 8 d: 180°; ≤ 12 d: 240°, both faces normal to the bolt axis; +60° for each face that slopes by up to 1:20
 *
 * Beyond 12 d the table is silent: refused, the turn comes from a test in a tension calibrator.
 *
 * Source: RCSC 2014 Table 8.2.
 *
 * @example
 * expect(inDegrees(nutRotation(inch(3 / 4), inch(3), 0).value.value)).toBeCloseTo(120, 9);
 * expect(nutRotation(inch(1), inch(12.5), 0).notices[0].code).toBe('rotation-not-tabulated');
 */
export function nutRotation(
  diameter: Millimetre,
  length: Millimetre,
  slopedFaces: 0 | 1 | 2,
  edition: RcscEdition = '2014',
): Outcome<Cited<Radian>> {
  const ratio = length / diameter;
  const band = TURN_BANDS.find(({ upTo }) => ratio <= upTo + 1e-9);
  if (!band) {
    return refused(notice('rotation-not-tabulated', { boltLength: lengthOf(length), limit: lengthOf(mm(12 * diameter)) }));
  }
  const value = degrees(inDegrees(band.turn) + PER_SLOPED_FACE * slopedFaces);
  return done({ value, source: rcscSource(edition, edition === '2020' ? 'Table 8.1' : 'Table 8.2', 'published') });
}

/**
 * Tolerance of that rotation: −30° and +60° since 2009; before, ±30° up to half a turn and ±45° above.
 *
 * Over-rotation alone is no cause for rejection, and a nut is never backed off to mend it. Source: RCSC Table 8.2, footnote (2009 and later from memory).
 *
 * @example
 * expect(inDegrees(rotationTolerance(degrees(240), '2014').plus)).toBeCloseTo(60, 9);
 * expect(inDegrees(rotationTolerance(degrees(240), '2004').plus)).toBeCloseTo(45, 9);
 */
export function rotationTolerance(rotation: Radian, edition: RcscEdition): { readonly minus: Radian; readonly plus: Radian } {
  if (edition !== '2004') return { minus: degrees(30), plus: degrees(60) };
  const either = degrees(inDegrees(rotation) <= 180 + 1e-9 ? 30 : 45);
  return { minus: either, plus: either };
}
