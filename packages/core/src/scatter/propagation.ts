import { pitchDiameter } from '../fasteners/thread.ts';
import { type Millimetre, N, type Newton, type NewtonMillimetre, Nmm } from '../quantity.ts';
import { byCoefficients } from '../torque/friction.ts';
import type { ThreadSize } from '../torque/thread-arm.ts';
import { preloadForTorque } from '../torque/tightening-torque.ts';

/** A figure and its standard deviation. */
export interface Spread {
  readonly mean: number;
  readonly deviation: number;
}

/** Torque and friction of one tightening, each with its spread, independent of one another. */
export interface ScatterInput {
  readonly size: ThreadSize;
  readonly bearingDiameter: Millimetre;
  readonly torque: Spread;
  readonly thread: Spread;
  readonly bearing: Spread;
}

export interface Propagated {
  readonly nominal: Newton;
  /** relative sensitivities d ln F / d ln x */
  readonly sensitivity: { readonly torque: number; readonly thread: number; readonly bearing: number };
  /** coefficient of variation to first order */
  readonly variation: number;
  /** shares of the variance, which add up to one: what the crew can act on */
  readonly share: { readonly torque: number; readonly thread: number; readonly bearing: number };
}

/**
 * How the scatter of torque and friction reaches the preload, to first order.
 *
 *     F = M/B,  B = 0.16·P + 0.58·d₂·μ_G + D_Km/2·μ_K
 *     d ln F/d ln M = 1,  d ln F/d ln μ_G = −0.58·d₂·μ_G/B,  d ln F/d ln μ_K = −D_Km/2·μ_K/B
 *     V_F² = Σ (sensitivity·V_x)²
 *
 * Source: VDI 2230-1 short form; Gaussian error propagation.
 *
 * @example
 * const found = propagate({ size: { diameter: mm(10), pitch: mm(1.5) }, bearingDiameter: mm(12.815), torque: { mean: 50000, deviation: 1000 }, thread: { mean: 0.12, deviation: 0.015 }, bearing: { mean: 0.12, deviation: 0.015 } });
 * expect(inKilonewton(found.nominal)).toBeCloseTo(30.54, 2);
 * expect(found.variation).toBeCloseTo(0.0784, 4);
 */
export function propagate(input: ScatterInput): Propagated {
  const { size, bearingDiameter, torque, thread, bearing } = input;
  const nominal = preloadAt(input, torque.mean, thread.mean, bearing.mean);
  const bracket = torque.mean / nominal;
  const sensitivity = {
    torque: 1,
    thread: -(0.58 * pitchDiameter(size.diameter, size.pitch) * thread.mean) / bracket,
    bearing: -((bearingDiameter / 2) * bearing.mean) / bracket,
  };
  const variance = {
    torque: (torque.deviation / torque.mean) ** 2,
    thread: (sensitivity.thread * (thread.deviation / thread.mean)) ** 2,
    bearing: (sensitivity.bearing * (bearing.deviation / bearing.mean)) ** 2,
  };
  const whole = variance.torque + variance.thread + variance.bearing;
  const share = { torque: variance.torque / whole, thread: variance.thread / whole, bearing: variance.bearing / whole };
  return { nominal, sensitivity, variation: Math.sqrt(whole), share };
}

const preloadAt = ({ size, bearingDiameter }: ScatterInput, torque: number, thread: number, bearing: number): Newton =>
  preloadForTorque(
    byCoefficients(thread, bearing, bearingDiameter, { standard: 'scatter', provenance: 'computed' }),
    size,
    Nmm(torque) as NewtonMillimetre,
    'short',
  );

/** Preload with every input at its k-sigma value, all against or all in favour of it: a bound, not a likelihood. */
export function worstCase(input: ScatterInput, sigmas: number): { readonly low: Newton; readonly high: Newton } {
  const { torque, thread, bearing } = input;
  const at = (sign: number) =>
    preloadAt(
      input,
      torque.mean + sign * sigmas * torque.deviation,
      thread.mean - sign * sigmas * thread.deviation,
      bearing.mean - sign * sigmas * bearing.deviation,
    );
  return { low: at(-1), high: at(1) };
}

/** Abscissas and weights of a five-point rule for a standard normal variable. Source: Abramowitz & Stegun, Table 25.10 (n = 5), rescaled. */
const HERMITE: readonly (readonly [z: number, weight: number])[] = [
  [-2.85697001387281, 0.0112574113277207],
  [-1.35562617997427, 0.222075922005613],
  [0, 0.533333333333333],
  [1.35562617997427, 0.222075922005613],
  [2.85697001387281, 0.0112574113277207],
];

/**
 * Mean and standard deviation of the preload when torque and both coefficients are normal: product rule over the three, five points each.
 * The preload is smooth in them over the usual range; with coefficients of variation up to 0.2 the rule is exact to four figures.
 */
export function normalMoments(input: ScatterInput): { readonly mean: Newton; readonly deviation: Newton } {
  const { torque, thread, bearing } = input;
  let first = 0;
  let second = 0;
  for (const [zt, wt] of HERMITE) {
    for (const [zg, wg] of HERMITE) {
      for (const [zk, wk] of HERMITE) {
        const force = preloadAt(
          input,
          torque.mean + zt * torque.deviation,
          thread.mean + zg * thread.deviation,
          bearing.mean + zk * bearing.deviation,
        );
        const weight = wt * wg * wk;
        first += weight * force;
        second += weight * force ** 2;
      }
    }
  }
  return { mean: N(first), deviation: N(Math.sqrt(Math.max(0, second - first ** 2))) };
}
