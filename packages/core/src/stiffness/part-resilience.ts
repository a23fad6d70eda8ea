import { type Megapascal, type Millimetre, mm } from '../quantity.ts';
import type { BoltSegments, Resilience } from './bolt-resilience.ts';

/** What is clamped, as a cylinder around the bolt. */
export interface ClampedPart {
  readonly clampLength: Millimetre;
  /** outer diameter of the bearing face, d_w */
  readonly bearingFace: Millimetre;
  readonly hole: Millimetre;
  /** outside diameter of the clamped part, D_A */
  readonly outside: Millimetre;
  readonly modulus: Megapascal;
  readonly joint: BoltSegments['joint'];
}

/** Cones from both ends meet (through bolt, 1); one cone on a tapped part (2). */
const CONES = { 'through bolt': 1, tapped: 2 } as const;

/**
 * Slope of the deformation cone.
 *
 *     through bolt   tan φ_D = 0.362 + 0.032·ln(β_L/2) + 0.153·ln y
 *     tapped         tan φ_E = 0.348 + 0.013·ln β_L + 0.193·ln y
 *
 * - β_L = l_K/d_w, y = D_A′/d_w
 *
 * Source: VDI 2230-1:2015 eq. (39), (42).
 */
export function coneSlope({ clampLength, bearingFace, outside, joint }: ClampedPart): number {
  const beta = clampLength / bearingFace;
  const y = outside / bearingFace;
  return joint === 'through bolt'
    ? 0.362 + 0.032 * Math.log(beta / 2) + 0.153 * Math.log(y)
    : 0.348 + 0.013 * Math.log(beta) + 0.193 * Math.log(y);
}

/** Diameter the cone needs: D_A,Gr = d_w + w·l_K·tan φ. Parts at least that wide hold the whole cone. */
export const coneDiameter = (part: ClampedPart): Millimetre =>
  mm(part.bearingFace + CONES[part.joint] * part.clampLength * coneSlope(part));

/**
 * Resilience of the clamped part.
 *
 * - D_A ≥ D_A,Gr: cone alone
 * - d_w < D_A < D_A,Gr: cone, then a sleeve of diameter D_A
 * - D_A ≤ d_w: sleeve alone, 4·l_K/(E·π·(D_A² − d_h²))
 *
 * Valid for: concentric clamping, D_A > d_h. Source: VDI 2230-1:2015 eq. (37) to (45).
 *
 * @example
 * const part = { clampLength: mm(40), bearingFace: mm(14.63), hole: mm(11), outside: mm(60), modulus: MPa(205000), joint: 'through bolt' };
 * expect(1e6 * partResilience(part)).toBeCloseTo(0.6535, 4);
 */
export function partResilience(part: ClampedPart): Resilience {
  const { clampLength: l, bearingFace: dw, hole: dh, outside: da, modulus } = part;
  const w = CONES[part.joint];
  if (da <= dw) return (4 * l) / (modulus * Math.PI * (da ** 2 - dh ** 2));
  const slope = coneSlope(part);
  const limit = coneDiameter(part);
  const wide = Math.min(da, limit);
  const cone = (2 / (w * dh * slope)) * Math.log(((dw + dh) * (wide - dh)) / ((dw - dh) * (wide + dh)));
  const sleeve = da >= limit ? 0 : (4 / (da ** 2 - dh ** 2)) * (l - (da - dw) / (w * slope));
  return (cone + sleeve) / (modulus * Math.PI);
}
