import { inch, inInch, type Millimetre, mm, mm2, type SquareMillimetre } from '../quantity.ts';

/**
 * Straight distance between neighbouring bolts: c = BC·sin(π/N), mm.
 *
 * @example
 * expect(inInch(boltChord(inch(13), 12))).toBeCloseTo(3.365, 3);
 */
export const boltChord = (boltCircle: Millimetre, bolts: number): Millimetre => mm(boltCircle * Math.sin(Math.PI / bolts));

/** Root area of all bolts of a flange, N·A_r, mm²: A_b of ASME VIII-1 Appendix 2. */
export const totalBoltArea = (bolts: number, rootArea: SquareMillimetre): SquareMillimetre => mm2(bolts * rootArea);

/**
 * Stud length between two flanges, both nuts full and points not counted.
 *
 *     L = 2·(t_f + t + d) + G + F, up to the next 1/4 in
 *
 * - t_f flange thickness without raised face; t its plus tolerance, 0.12 in, 0.19 in from NPS 20; d bolt diameter (height of a heavy hex nut);
 *   G gasket, 0.12 in; F both facings
 *
 * Error: 6 of 98 tabulated lengths of Class 150 to 1500 are 1/4 in longer, because of the minus tolerance of the length. Take the table where there is one.
 *
 * Source: ASME B16.5-2009 annex on stud lengths (constants from memory).
 *
 * @example
 * const flange = b165Flange('8', 300).value;
 * expect(inInch(studLength(flange))).toBeCloseTo(5.5, 9);
 */
export function studLength({
  nps,
  thickness,
  boltDiameter,
  raisedFaceHeight,
}: {
  readonly nps: string;
  readonly thickness: Millimetre;
  readonly boltDiameter: Millimetre;
  readonly raisedFaceHeight: Millimetre;
}): Millimetre {
  const tolerance = Number(nps) >= 20 ? 0.19 : 0.12;
  const exact = 2 * (inInch(thickness) + tolerance + inInch(boltDiameter)) + 0.12 + 2 * inInch(raisedFaceHeight);
  return inch(Math.ceil(exact * 4 - 1e-6) / 4);
}
