import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { ksi, type Megapascal, type Newton } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';
import { forceOn, nominalStressArea, type Thread } from './thread.ts';

const a194: Source = { standard: 'ASTM A194/A194M', edition: '2016', clause: 'proof load, heavy hex', provenance: 'memory' };
const a563: Source = { standard: 'ASTM A563', edition: '2015', clause: 'Table 3, heavy hex', provenance: 'memory' };

/** Heavy hex nuts by specification and grade; `zinc` coated nuts are tapped oversize and carry less. */
export type InchNutGrade = 'A194 2H' | 'A194 2HM' | 'A194 7' | 'A194 7M' | 'A563 DH' | 'A563 DH zinc' | 'A563 DH3' | 'A563 D' | 'A563 C';

export const INCH_NUT_PROOF: Readonly<Record<InchNutGrade, Cited<Megapascal>>> = {
  'A194 2H': { value: ksi(175), source: a194 },
  'A194 2HM': { value: ksi(150), source: a194 },
  'A194 7': { value: ksi(175), source: a194 },
  'A194 7M': { value: ksi(150), source: a194 },
  'A563 DH': { value: ksi(175), source: a563 },
  'A563 DH zinc': { value: ksi(150), source: a563 },
  'A563 DH3': { value: ksi(175), source: a563 },
  'A563 D': { value: ksi(150), source: a563 },
  'A563 C': { value: ksi(144), source: a563 },
};

/**
 * Proof load of a heavy hex inch nut: F = S·A_t, N, on the printed tensile stress area of its thread (8UN above 1 in on flange studs).
 *
 * Source: ASTM A194, A563 (from memory).
 *
 * @example
 * const load = inchNutProofLoad('A194 2H', findInchThread('1 1/4-8UN'));
 * expect(inLbf(load.value.value)).toBeCloseTo(175000, 0);
 */
export function inchNutProofLoad(grade: string, thread: Thread): Outcome<Cited<Newton>> {
  const proof = Object.hasOwn(INCH_NUT_PROOF, grade) ? INCH_NUT_PROOF[grade as InchNutGrade] : undefined;
  if (!proof) return refused(notice('nut-unknown', { standard: 'ASTM', nutClass: grade, size: thread.designation }));
  return done({ value: forceOn(nominalStressArea(thread), proof.value), source: proof.source });
}
