import { type Megapascal, type Millimetre, mm, N, type Newton, type Radian, rad } from '../quantity.ts';
import type { Resilience } from './bolt-resilience.ts';

/** Share of an axial load that reaches the bolt, load at the bearing faces: Φ_K = δ_P/(δ_S + δ_P). Source: VDI 2230-1:2015. */
export const forceRatio = (bolt: Resilience, parts: Resilience, introduction = 1): number => (introduction * parts) / (bolt + parts);

/** Preload lost by embedding: F_Z = f_Z/(δ_S + δ_P), N. Source: VDI 2230-1:2015 section 5.4.2. */
export const embeddingLoss = (embedding: Millimetre, bolt: Resilience, parts: Resilience): Newton => N(embedding / (bolt + parts));

/** Elongation of the bolt with head and nut: f = F·δ_S, mm. A micrometer on the ends does not see all of it. */
export const boltElongation = (preload: Newton, bolt: Resilience): Millimetre => mm(preload * bolt);

/**
 * Rotation from snug to a preload: ϑ = 2π/P·(F − F_snug)·(δ_S + δ_P), rad.
 *
 * Joint setting and the seating of threads are not in it. Source: VDI 2230-1:2015.
 *
 * @example
 * expect(inDegrees(rotationToPreload(kN(43.5), mm(1.5), 4.07092e-6, 0.653524e-6))).toBeCloseTo(49.32, 2);
 */
export const rotationToPreload = (preload: Newton, pitch: Millimetre, bolt: Resilience, parts: Resilience, snug: Newton = N(0)): Radian =>
  rad(((2 * Math.PI) / pitch) * (preload - snug) * (bolt + parts));

/** Rotation by bolt stretch alone, joint taken rigid: θ = 2π·f_t·L_B/(E·lead), rad. It understates the real angle. Source: MIL-HDBK-60 (1990). */
export const rigidJointRotation = (stress: Megapascal, effectiveLength: Millimetre, modulus: Megapascal, lead: Millimetre): Radian =>
  rad((2 * Math.PI * stress * effectiveLength) / (modulus * lead));

/**
 * Effective length of that formula: L_B = (d_ts/d)²·(L_S + 0.5·H_B) + L_J − L_S + 0.5·H_N, mm. Source: MIL-HDBK-60 (1990).
 *
 * - d_ts stress diameter, L_S shank, L_J joint, H_B head height, H_N nut height
 */
export const effectiveBoltLength = (of: {
  readonly diameter: Millimetre;
  readonly stressDiameter: Millimetre;
  readonly shank: Millimetre;
  readonly joint: Millimetre;
  readonly head: Millimetre;
  readonly nut: Millimetre;
}): Millimetre => mm((of.stressDiameter / of.diameter) ** 2 * (of.shank + 0.5 * of.head) + of.joint - of.shank + 0.5 * of.nut);
