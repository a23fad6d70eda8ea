import { f436Washer } from '../fasteners/f436-washer.ts';
import type { StructuralHole } from '../fasteners/inch-hole.ts';
import { done, type Outcome } from '../outcome.ts';
import { inch, type Millimetre } from '../quantity.ts';
import type { Cited } from '../source.ts';
import { rcscSource } from './editions.ts';
import { structuralGrade } from './structural-grade.ts';

const FIVE_SIXTEENTHS = inch(5 / 16);

/**
 * Least thickness of the washer over a hole of the outer ply; `null` where no hardened washer thickness is asked for beyond ASTM F436 and the size is not listed.
 *
 * - oversized or short-slotted: ASTM F436; 150 ksi bolts over 1 in: F436 of 5/16 in
 * - long-slotted: plate washer or continuous bar of 5/16 in, with a hardened washer on 150 ksi bolts over 1 in
 * - standard holes: ASTM F436 where a washer is asked for
 *
 * Source: RCSC 2014 section 6 and Table 6.1; AISC 360-05 J3.2.
 *
 * @example
 * expect(inInch(washerThicknessOver('oversized', 'F3125 A490', inch(1.125)).value.value)).toBeCloseTo(0.3125, 9);
 * expect(inInch(washerThicknessOver('oversized', 'F3125 A325', inch(1.125)).value.value)).toBeCloseTo(0.136, 9);
 */
export function washerThicknessOver(hole: StructuralHole, gradeId: string, diameter: Millimetre): Outcome<Cited<Millimetre | null>> {
  const grade = structuralGrade(gradeId);
  if (!grade.ok) return grade;
  const source = rcscSource('2014', '6.2, Table 6.1', 'published');
  const strongAndLarge = grade.value.group.startsWith('150') && diameter > inch(1) + 1e-6;
  if (hole === 'long-slotted' || (hole !== 'standard' && strongAndLarge)) return done({ value: FIVE_SIXTEENTHS, source });
  return done({ value: f436Washer(diameter)?.thicknessMin ?? null, source });
}
