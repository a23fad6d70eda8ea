import { N, type Newton } from '../quantity.ts';

/** A joint under a working load F_A that pulls it apart, per bolt; Φ is the share of it that the bolt takes. */
export interface WorkingLoad {
  readonly ratio: number;
  readonly load: Newton;
  /** preload lost by embedding, F_Z */
  readonly embeddingLoss: Newton;
}

/**
 * Least assembly preload: F_M,min = F_K,req + (1 − Φ)·F_A,max + F_Z, N. Thermal change of preload is not in it.
 *
 * Source: VDI 2230-1:2015 step R5.
 *
 * @example
 * const load = { ratio: 0.0697036, load: kN(12), embeddingLoss: kN(2.93377) };
 * expect(inKilonewton(leastAssemblyPreload(kN(8), load))).toBeCloseTo(22.097, 3);
 */
export const leastAssemblyPreload = (clampNeeded: Newton, { ratio, load, embeddingLoss }: WorkingLoad): Newton =>
  N(clampNeeded + (1 - ratio) * load + embeddingLoss);

/** Greatest assembly preload to be reckoned with: F_M,max = α_A·F_M,min, N. Source: VDI 2230-1:2015 step R6. */
export const greatestAssemblyPreload = (tighteningFactor: number, least: Newton): Newton => N(tighteningFactor * least);

/**
 * Clamp force left when the least favourable bolt carries the working load: F_KR = F_M/α_A − F_Z − (1 − Φ)·F_A, N; zero once it opens.
 *
 * Source: VDI 2230-1:2015 steps R5, R6 read backwards.
 *
 * @example
 * const load = { ratio: 0.0697036, load: kN(12), embeddingLoss: kN(2.93377) };
 * expect(inKilonewton(residualClampForce(kN(63.3171), 1.6, load))).toBeCloseTo(25.476, 3);
 */
export const residualClampForce = (greatest: Newton, tighteningFactor: number, { ratio, load, embeddingLoss }: WorkingLoad): Newton =>
  N(Math.max(0, greatest / tighteningFactor - embeddingLoss - (1 - ratio) * load));

/** How much of something there is for what is asked: a preload for another, a strength for a stress. Below one it is too little. */
export const reserve = (available: number, asked: number): number => available / asked;
