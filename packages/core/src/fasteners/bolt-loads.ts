import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { Newton } from '../quantity.ts';
import { type Grade, strengthAt } from './grade.ts';
import { forceOn, nominalStressArea, type Thread } from './thread.ts';

export type BoltLoad = 'proof' | 'yield' | 'tensile' | 'tensileMax';

/**
 * Load of a full-size bolt at one of its strengths: F = S·A_t, N, unrounded, on the printed stress area.
 *
 * The load tables of ASTM F3125, A449, A354 and SAE J429 are this, printed to 50 or 100 lbf. Refuses where the standard gives no strength.
 *
 * @example
 * const a325 = ASTM_GRADES.find(({ id }) => id === 'F3125 A325');
 * expect(inLbf(boltLoad(a325, findInchThread('3/4'), 'proof').value)).toBeCloseTo(28390, 0);
 */
export function boltLoad(grade: Grade, thread: Thread, which: BoltLoad): Outcome<Newton> {
  const strength = strengthAt(grade, thread.diameter, thread.designation);
  if (!strength.ok) return strength;
  const stress = strength.value[which];
  if (stress === null || stress === undefined) return refused(notice('no-proof-load', { grade: grade.id }));
  return done(forceOn(nominalStressArea(thread), stress));
}
