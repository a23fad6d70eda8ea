import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { N, type Newton } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';

/** Faying surfaces: A clean mill scale or hot-dip galvanised, B blasted. */
export type FayingClass = 'A' | 'B';

const source = (standard: string, edition: string): Source => ({
  standard,
  edition,
  clause: 'mean slip coefficient',
  provenance: 'memory',
});

/** Mean slip coefficient by the edition that gives it. Class A differs: 0.35, 0.33, 0.30. */
export const SLIP_COEFFICIENTS = [
  { edition: 'AISC 360-05', A: 0.35, B: 0.5, source: source('AISC 360', '2005') },
  { edition: 'AISC 360-10', A: 0.3, B: 0.5, source: source('AISC 360', '2010') },
  { edition: 'AISC 360-16', A: 0.3, B: 0.5, source: source('AISC 360', '2016') },
  { edition: 'RCSC 2004', A: 0.33, B: 0.5, source: source('RCSC', '2004') },
  { edition: 'RCSC 2009', A: 0.33, B: 0.5, source: source('RCSC', '2009') },
  { edition: 'RCSC 2014', A: 0.3, B: 0.5, source: source('RCSC', '2014') },
  { edition: 'RCSC 2020', A: 0.3, B: 0.5, source: source('RCSC', '2020') },
] as const;

/** Mean installed over specified minimum pretension. AISC 360 J3.8. */
export const SLIP_MULTIPLIER: Cited<number> = { value: 1.13, source: { standard: 'AISC 360', clause: 'J3.8, D_u', provenance: 'memory' } };

/**
 * Mean slip coefficient of a faying surface by edition.
 *
 * @example
 * expect(slipCoefficient('A', 'AISC 360-05').value.value).toBe(0.35);
 * expect(slipCoefficient('A', 'AISC 360-10').value.value).toBe(0.3);
 */
export function slipCoefficient(faying: FayingClass, edition: string): Outcome<Cited<number>> {
  const found = SLIP_COEFFICIENTS.find((one) => one.edition === edition);
  if (!found) return refused(notice('edition-unknown', { edition, known: SLIP_COEFFICIENTS.map((one) => one.edition).join(', ') }));
  return done({ value: found[faying], source: found.source });
}

export interface SlipInput {
  /** mean slip coefficient */
  readonly coefficient: number;
  /** minimum pretension T_b */
  readonly pretension: Newton;
  /** slip planes n_s */
  readonly planes: number;
  /** factor for fillers h_f: 1 with none or one, 0.85 with two or more */
  readonly fillers?: number;
}

/**
 * Nominal slip resistance of one bolt: R_n = μ·D_u·h_f·T_b·n_s, N. Source: AISC 360-10 eq. J3-4.
 *
 * @example
 * expect(inKip(nominalSlipResistance({ coefficient: 0.3, pretension: kip(28), planes: 2 }))).toBeCloseTo(18.98, 2);
 */
export const nominalSlipResistance = ({ coefficient, pretension, planes, fillers = 1 }: SlipInput): Newton =>
  N(coefficient * SLIP_MULTIPLIER.value * fillers * pretension * planes);
