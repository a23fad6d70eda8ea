import { type Megapascal, type Millimetre, mm, type Quantity, type Radian, rad } from '../quantity.ts';

/** Stiffness of a bolt or of what it clamps, N/mm. */
export type Stiffness = Quantity<'N/mm'>;
export const newtonPerMm = (value: number) => value as Stiffness;

export interface FrustumInput {
  /** E of the part */
  readonly modulus: Megapascal;
  /** bolt diameter, the hole taken as large as the bolt */
  readonly diameter: Millimetre;
  /** thickness of the frustum */
  readonly thickness: Millimetre;
  /** diameter of the face it starts from, usually 1.5 d under head or washer */
  readonly face: Millimetre;
  readonly halfAngle?: Radian;
}

const THIRTY_DEGREES = rad(Math.PI / 6);

/** Diameter of the face a cone starts from, under head, nut or washer: 1.5 d, mm. Source: Shigley's Mechanical Engineering Design, 9th edition, 8-5. */
export const coneFace = (diameter: Millimetre): Millimetre => mm(1.5 * diameter);

/**
 * Diameter of a frustum at its wide end: D₂ = D₁ + 2t·tan α, mm.
 *
 * @example
 * expect(inInch(frustumEnd(inch(0.75), inch(0.595)))).toBeCloseTo(1.437, 3);
 */
export const frustumEnd = (face: Millimetre, thickness: Millimetre, halfAngle: Radian = THIRTY_DEGREES): Millimetre =>
  mm(face + 2 * thickness * Math.tan(halfAngle));

/**
 * Stiffness of one frustum of clamped material, N/mm.
 *
 *     k = π·E·d·tan α / ln[ (2t·tan α + D − d)(D + d) / ((2t·tan α + D + d)(D − d)) ]
 *
 * - α half angle of the pressure cone, 30° by default
 *
 * Valid for: plates wide enough for the cone, D > d. The plan's own stiffness uses the deformation cone of VDI 2230; this is the textbook check.
 * Source: Shigley's Mechanical Engineering Design, 9th edition, eq. 8-20.
 *
 * @example
 * const k = frustumStiffness({ modulus: psi(30e6), diameter: inch(0.5), thickness: inch(0.595), face: inch(0.75) });
 * expect(inLbf(k * 25.4) / 1e6).toBeCloseTo(30.8, 1);
 */
export function frustumStiffness({ modulus, diameter, thickness, face, halfAngle = THIRTY_DEGREES }: FrustumInput): Stiffness {
  const tangent = Math.tan(halfAngle);
  const cone = 2 * thickness * tangent;
  const ratio = ((cone + face - diameter) * (face + diameter)) / ((cone + face + diameter) * (face - diameter));
  return newtonPerMm((Math.PI * modulus * diameter * tangent) / Math.log(ratio));
}

/** Springs in series: 1/k = Σ 1/kᵢ, N/mm. */
export const inSeries = (...stiffnesses: readonly Stiffness[]): Stiffness =>
  newtonPerMm(1 / stiffnesses.reduce((sum, one) => sum + 1 / one, 0));

/**
 * Stiffness of a grip of one material between two washer faces of 1.5 d: two equal frusta of 30°.
 *
 *     k_m = 0.5774·π·E·d / (2·ln[5·(0.5774·l + 0.5·d)/(0.5774·l + 2.5·d)])
 *
 * Source: Shigley's Mechanical Engineering Design, 9th edition, eq. 8-22.
 *
 * @example
 * expect(inLbf(memberStiffness(psi(30e6), inch(0.5), inch(1.345)) * 25.4) / 1e6).toBeCloseTo(14.64, 1);
 */
export const memberStiffness = (modulus: Megapascal, diameter: Millimetre, grip: Millimetre): Stiffness => {
  const half = frustumStiffness({ modulus, diameter, thickness: mm(grip / 2), face: coneFace(diameter) });
  return inSeries(half, half);
};

/** Constants A, B of the exponential form, by material of the grip. Source: Wileman, Choudhury & Green 1991. */
export const EXPONENTIAL_STIFFNESS = {
  steel: { A: 0.78715, B: 0.62873 },
  aluminium: { A: 0.7967, B: 0.63816 },
  copper: { A: 0.79568, B: 0.63553 },
  'grey cast iron': { A: 0.77871, B: 0.61616 },
  general: { A: 0.78952, B: 0.62914 },
} as const;

/**
 * Stiffness of a grip of one material, fitted to finite elements: k_m = E·d·A·exp(B·d/l), N/mm.
 *
 * - A, B from {@link EXPONENTIAL_STIFFNESS}; l grip
 *
 * Source: Wileman, Choudhury & Green 1991; Shigley's Mechanical Engineering Design, 9th edition, eq. 8-23.
 *
 * @example
 * const k = exponentialStiffness(psi(30e6), inch(0.5), inch(1.345), EXPONENTIAL_STIFFNESS.steel);
 * expect(inLbf(k * 25.4) / 1e6).toBeCloseTo(14.92, 1);
 */
export const exponentialStiffness = (
  modulus: Megapascal,
  diameter: Millimetre,
  grip: Millimetre,
  { A, B }: { readonly A: number; readonly B: number },
): Stiffness => newtonPerMm(modulus * diameter * A * Math.exp((B * diameter) / grip));
