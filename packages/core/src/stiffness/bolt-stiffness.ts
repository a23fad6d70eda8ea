import { type Megapascal, type Millimetre, mm, type SquareMillimetre } from '../quantity.ts';
import { newtonPerMm, type Stiffness } from './frusta.ts';

export interface TwoAreaBolt {
  readonly modulus: Megapascal;
  /** area and length of the plain shank in the grip */
  readonly shankArea: SquareMillimetre;
  readonly shankLength: Millimetre;
  /** stress area and length of the thread in the grip */
  readonly threadArea: SquareMillimetre;
  readonly threadLength: Millimetre;
}

/**
 * Stiffness of a bolt of two areas within the grip.
 *
 *     k_b = A_d·A_t·E / (A_d·l_t + A_t·l_d)
 *
 * Head, nut and engaged thread are left out. Source: Shigley's Mechanical Engineering Design, 9th edition, eq. 8-17.
 *
 * @example
 * const k = twoAreaStiffness({ modulus: MPa(207000), shankArea: mm2(113), shankLength: mm(30), threadArea: mm2(84.3), threadLength: mm(15) });
 * expect(k / 1000).toBeCloseTo(466.8, 0);
 */
export const twoAreaStiffness = ({ modulus, shankArea, shankLength, threadArea, threadLength }: TwoAreaBolt): Stiffness =>
  newtonPerMm((shankArea * threadArea * modulus) / (shankArea * threadLength + threadArea * shankLength));

/** Grip: everything clamped, washers included, mm. */
export const gripOf = (...thicknesses: readonly Millimetre[]): Millimetre => mm(thicknesses.reduce((sum, one) => sum + one, 0));

/** Length of plain shank, l_d = L − L_T, and of thread in the grip, l_t = l − l_d, mm. */
export const shankInGrip = (boltLength: Millimetre, threadLength: Millimetre): Millimetre => mm(boltLength - threadLength);
export const threadInGrip = (grip: Millimetre, shankLength: Millimetre): Millimetre => mm(grip - shankLength);

/**
 * Effective grip of a cap screw in a tapped part: l′ = h + t₂/2 where the tapped part is thinner than d, else h + d/2.
 *
 * - h everything clamped above it, washers included
 *
 * Source: Shigley's Mechanical Engineering Design, 9th edition, Table 8-7.
 *
 * @example
 * expect(tappedGrip(mm(20), mm(12), mm(25))).toBe(26);
 * expect(tappedGrip(mm(20), mm(12), mm(8))).toBe(24);
 */
export const tappedGrip = (clamped: Millimetre, diameter: Millimetre, tapped: Millimetre): Millimetre =>
  mm(clamped + Math.min(tapped, diameter) / 2);

/** Least length of a cap screw in a tapped part: L > h + 1.5 d, mm. Source: as above. */
export const tappedScrewLength = (clamped: Millimetre, diameter: Millimetre): Millimetre => mm(clamped + 1.5 * diameter);

/**
 * Least length of a through bolt: grip, nut height and two threads beyond it.
 *
 * @example
 * expect(inInch(throughBoltLength(inch(1.5), inch(0.546875), inch(1 / 11)))).toBeCloseTo(2.229, 3);
 */
export const throughBoltLength = (grip: Millimetre, nutHeight: Millimetre, pitch: Millimetre): Millimetre =>
  mm(grip + nutHeight + 2 * pitch);

/** The next length up in a series of equal steps. */
export const roundedUpLength = (least: Millimetre, step: Millimetre): Millimetre => mm(Math.ceil(least / step - 1e-9) * step);
