import { type Megapascal, type Millimetre, mm2, N, type Newton, type SquareMillimetre } from '../quantity.ts';
import { effectiveSeatingWidth, gasketReactionDiameter } from './gasket-width.ts';

export interface GasketLoadInput {
  /** gasket contact face */
  readonly outer: Millimetre;
  readonly inner: Millimetre;
  /** basic seating width b₀ */
  readonly basicWidth: Millimetre;
  readonly m: number;
  readonly y: Megapascal;
  readonly pressure: Megapascal;
}

/** Loads of the code's flange design: what bolts are sized for, not what they are tightened to. */
export interface GasketLoads {
  /** b */
  readonly width: Millimetre;
  /** G */
  readonly diameter: Millimetre;
  /** H, hydrostatic end force */
  readonly endForce: Newton;
  /** H_p, to keep the gasket tight */
  readonly contactForce: Newton;
  /** W_m1 = H + H_p */
  readonly operating: Newton;
  /** W_m2, to seat the gasket */
  readonly seating: Newton;
}

/**
 * Bolt loads of ASME VIII-1 Appendix 2.
 *
 *     H = π/4·G²·P      H_p = 2b·π·G·m·P      W_m1 = H + H_p      W_m2 = π·b·G·y
 *
 * Some prints use 0.785 and 3.14: 0.05 % low. Source: ASME BPVC VIII-1 Appendix 2, 2-5.
 *
 * @example
 * const loads = gasketLoads({ outer: inch(30), inner: inch(29), basicWidth: inch(0.25), m: 3.75, y: psi(7600), pressure: psi(135) });
 * expect(inLbf(loads.operating)).toBeCloseTo(115730, 0);
 * expect(inLbf(loads.seating)).toBeCloseTo(176086, 0);
 */
export function gasketLoads({ outer, inner, basicWidth, m, y, pressure }: GasketLoadInput): GasketLoads {
  const width = effectiveSeatingWidth(basicWidth);
  const diameter = gasketReactionDiameter(outer, inner, basicWidth);
  const endForce = N((Math.PI / 4) * diameter ** 2 * pressure);
  const contactForce = N(2 * width * Math.PI * diameter * m * pressure);
  return { width, diameter, endForce, contactForce, operating: N(endForce + contactForce), seating: N(Math.PI * width * diameter * y) };
}

/** Bolt areas the code asks for, and the design load of seating. */
export interface BoltDesign {
  /** A_m1 = W_m1/S_b */
  readonly operatingArea: SquareMillimetre;
  /** A_m2 = W_m2/S_a */
  readonly seatingArea: SquareMillimetre;
  /** A_m, the greater of the two */
  readonly neededArea: SquareMillimetre;
  /** W = (A_m + A_b)·S_a/2 */
  readonly seatingLoad: Newton;
}

/**
 * Bolt area needed, and design bolt load for seating.
 *
 * - S_a, S_b allowable bolt stress at ambient and at design temperature; A_b root area of all bolts
 *
 * Source: ASME BPVC VIII-1 Appendix 2, 2-5.
 *
 * @example
 * const loads = gasketLoads({ outer: inch(30), inner: inch(29), basicWidth: inch(0.25), m: 3.75, y: psi(7600), pressure: psi(135) });
 * expect(inInch2(boltDesign(loads, inch2(44 * 0.302), ksi(25), ksi(25)).neededArea)).toBeCloseTo(7.0435, 3);
 */
export function boltDesign(
  { operating, seating }: Pick<GasketLoads, 'operating' | 'seating'>,
  boltArea: SquareMillimetre,
  ambient: Megapascal,
  design: Megapascal,
): BoltDesign {
  const operatingArea = mm2(operating / design);
  const seatingArea = mm2(seating / ambient);
  const neededArea = mm2(Math.max(operatingArea, seatingArea));
  return { operatingArea, seatingArea, neededArea, seatingLoad: N(((neededArea + boltArea) * ambient) / 2) };
}
