import { notice } from '../notice/index.ts';
import { length } from '../notice/measure.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Megapascal, type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

/** Strength over one range of diameters. `null`: the standard gives no value, and none is invented. */
export interface Strength {
  /** nominal diameters above this ... */
  readonly above: Millimetre;
  /** ... up to and including this */
  readonly upTo: Millimetre;
  /** stress under proof load, on the stress area */
  readonly proof: Megapascal | null;
  /** minimum lower yield stress, or stress at 0.2 % non-proportional elongation */
  readonly yield: Megapascal | null;
  /** minimum tensile strength */
  readonly tensile: Megapascal;
  /** maximum tensile strength where limited */
  readonly tensileMax?: Megapascal;
  /** where this range rests on something else than the standard of the grade */
  readonly source?: Source;
}

/** A property class or grade. */
export interface Grade {
  /** how a joint list names it: `8.8`, `10.9`, `A2-70`, `A193 B7`, `F3125 A325`, `J429 Gr 5` */
  readonly id: string;
  /** other spellings of the same grade */
  readonly aliases?: readonly string[];
  readonly family: 'ISO 898-1' | 'ISO 3506-1' | 'ASTM' | 'SAE J429';
  readonly ranges: readonly Strength[];
  /** tensile and yield the structural code uses (nominal, from the class digits), where it differs from the minimum */
  readonly nominal?: { readonly tensile: Megapascal; readonly yield: Megapascal };
  readonly source: Source;
}

/**
 * The strength of a grade at a diameter; refuses a size the standard does not list.
 *
 * @example
 * const strength = strengthAt(findGrade('8.8').value, mm(24));
 * expect(strength.value.yield).toBe(660);
 */
export function strengthAt(grade: Grade, diameter: Millimetre, size = `${diameter} mm`): Outcome<Strength> {
  const range = grade.ranges.find(({ above, upTo }) => diameter > above && diameter <= upTo + 1e-9);
  if (range) return done(range);
  const largest = mm(Math.max(...grade.ranges.map(({ upTo }) => upTo)));
  return refused(notice('grade-not-in-size', { grade: grade.id, size, largest: length(largest) }));
}
