import { type Megapascal, type Millimetre, MPa, N, type Newton, type SquareMillimetre } from '../quantity.ts';
import type { Stiffness } from './frusta.ts';

/**
 * Share of an external axial load that the bolt takes: C = k_b/(k_b + k_m).
 *
 * Source: Shigley's Mechanical Engineering Design, 9th edition, eq. (f) of 8-7.
 *
 * @example
 * expect(jointConstant(6.5, 13.8)).toBeCloseTo(0.32, 2);
 */
export const jointConstant = (bolt: Stiffness, members: Stiffness): number => bolt / (bolt + members);

/** Preload as a share of the proof load: F_i = share·A_t·S_p, 0.75 where bolts are to be reused, 0.9 for permanent joints. Shigley 9e eq. 8-31. */
export const preloadFromProof = (share: number, area: SquareMillimetre, proof: Megapascal): Newton => N(share * area * proof);

/** A preloaded bolt under an external load P that pulls the joint apart, per bolt. */
export interface JointUnderLoad {
  readonly constant: number;
  readonly preload: Newton;
  readonly load: Newton;
}

/** Force in the bolt: F_b = F_i + C·P, N, while the joint stays closed. */
export const boltForce = ({ constant, preload, load }: JointUnderLoad): Newton => N(preload + constant * load);

/** Force left between the parts: F_m = F_i − (1 − C)·P, N, zero once it opens. */
export const clampForce = ({ constant, preload, load }: JointUnderLoad): Newton => N(Math.max(0, preload - (1 - constant) * load));

/**
 * External load at which a given clamp force is left: P = (F_i − F_c)/(1 − C), N.
 *
 * @example
 * expect(loadForClamp(jointConstant(2, 1), N(2250), N(225))).toBeCloseTo(6075, 6);
 */
export const loadForClamp = (constant: number, preload: Newton, clamp: Newton): Newton => N((preload - clamp) / (1 - constant));

/**
 * Yield factor: n_p = S_p·A_t/(C·P + F_i). Source: Shigley's Mechanical Engineering Design, 9th edition, eq. 8-28.
 *
 * @example
 * expect(yieldFactor({ constant: 0.368, preload: kip(14.4), load: kip(6) }, ksi(85), inch2(0.226))).toBeCloseTo(1.16, 2);
 */
export const yieldFactor = (joint: JointUnderLoad, proof: Megapascal, area: SquareMillimetre): number => (proof * area) / boltForce(joint);

/**
 * Load factor: n_L = (S_p·A_t − F_i)/(C·P), the overload the bolt bears beyond its preload. Source: as above, eq. 8-29.
 *
 * @example
 * expect(loadFactor({ constant: 0.368, preload: kip(14.4), load: kip(6) }, ksi(85), inch2(0.226))).toBeCloseTo(2.18, 2);
 */
export const loadFactor = ({ constant, preload, load }: JointUnderLoad, proof: Megapascal, area: SquareMillimetre): number =>
  (proof * area - preload) / (constant * load);

/**
 * Separation factor: n_0 = F_i/(P·(1 − C)). Source: as above, eq. 8-30.
 *
 * @example
 * expect(separationFactor({ constant: 0.368, preload: kip(14.4), load: kip(6) })).toBeCloseTo(3.8, 2);
 */
export const separationFactor = ({ constant, preload, load }: JointUnderLoad): number => preload / (load * (1 - constant));

/**
 * Bolts that carry a total load with a load factor: N = C·n_L·P_total/(S_p·A_t − F_i), not rounded; take the next whole number.
 *
 * @example
 * const joint = { constant: 0.368, preload: kip(14.4), load: kip(36) };
 * expect(boltsForLoadFactor(joint, 2, ksi(85), inch2(0.226))).toBeCloseTo(5.52, 1);
 */
export const boltsForLoadFactor = (whole: JointUnderLoad, factor: number, proof: Megapascal, area: SquareMillimetre): number =>
  (whole.constant * factor * whole.load) / (proof * area - whole.preload);

/** The next whole number of bolts. */
export const wholeBolts = (needed: number): number => Math.ceil(needed - 1e-9);

/** Share of a pressure's end force that each of n bolts takes: P = π/4·D²·p/n, N. */
export const pressureLoadPerBolt = (pressure: Megapascal, diameter: Millimetre, bolts: number): Newton =>
  N(((Math.PI / 4) * diameter ** 2 * pressure) / bolts);

/** Stress of a force on an area, MPa. */
export const stressOn = (force: Newton, area: SquareMillimetre): Megapascal => MPa(force / area);

/** Stress in the bolt in service: σ_b = F_i/A + C·P/A, MPa, from its stress at preload. */
export const serviceStress = (atPreload: Megapascal, constant: number, load: Newton, area: SquareMillimetre): Megapascal =>
  MPa(atPreload + (constant * load) / area);

/**
 * Alternating stress of a load that comes and goes between zero and P: σ_a = C·P/(2·A_t), MPa.
 *
 * @example
 * expect(alternatingStress(0.33, kN(80), mm2(561))).toBeCloseTo(23.53, 2);
 */
export const alternatingStress = (constant: number, load: Newton, area: SquareMillimetre): Megapascal =>
  MPa((constant * load) / (2 * area));
