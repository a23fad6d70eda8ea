import { type Megapascal, type Millimetre, mm, type SquareMillimetre } from '../quantity.ts';

export interface ElongationInput {
  /** assembly bolt stress on the root area */
  readonly rootStress: Megapascal;
  /** between the middles of the two nuts */
  readonly length: Millimetre;
  readonly modulus: Megapascal;
  readonly rootArea: SquareMillimetre;
  readonly stressArea: SquareMillimetre;
}

/**
 * Elongation of a threaded stud at its assembly stress.
 *
 *     ΔL = (S_b·L_E/E)·(A_r/A_t)
 *
 * - S_b stress on the root area A_r; the stretched thread is counted with its stress area A_t
 *
 * Source: ASME PCC-1:2013 section 10.2.
 *
 * @example
 * const found = studElongation({ rootStress: ksi(50), length: inch(9), modulus: ksi(30000), rootArea: inch2(1.405), stressArea: inch2(1.492) });
 * expect(inInch(found)).toBeCloseTo(0.01413, 4);
 */
export const studElongation = ({ rootStress, length, modulus, rootArea, stressArea }: ElongationInput): Millimetre =>
  mm(((rootStress * length) / modulus) * (rootArea / stressArea));
