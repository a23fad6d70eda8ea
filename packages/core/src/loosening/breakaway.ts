import { tighteningWork } from '../battery/work.ts';
import { type Millimetre, N, type Newton, type NewtonMillimetre, Nmm, rad } from '../quantity.ts';
import type { ThreadSize } from '../torque/thread-arm.ts';

/**
 * Share of the tightening torque that goes into the lead of the thread: s = P/(2π·K·d). It helps while loosening.
 *
 * Source: statics of the thread; K by ISO 16047.
 */
export const leadShare = ({ diameter, pitch }: ThreadSize, nutFactor: number): number => pitch / (2 * Math.PI * nutFactor * diameter);

/**
 * Torque that loosens a fresh nut, as a share of the torque that tightened it.
 *
 *     r₀ = 1 − P/(π·K·d)
 *
 * Whatever the friction: tightening and loosening differ by F·P/π. Source: W. Eccles, LUBMAT 2014 (idea); statics.
 *
 * @example
 * expect(freshLooseningShare({ diameter: mm(16), pitch: mm(2) }, 0.12)).toBeCloseTo(0.668, 3);
 */
export const freshLooseningShare = (size: ThreadSize, nutFactor: number): number => 1 - 2 * leadShare(size, nutFactor);

/**
 * Breakaway torque of an aged nut, as a share of its tightening torque.
 *
 *     T_break/T_tight = f·[(1 − s)·φ − s]
 *
 * - f share of the preload still there; φ factor by which friction has grown; s {@link leadShare}
 *
 * φ is an assumption the user picks, never a result. Source: statics with a grown friction share.
 *
 * @example
 * expect(agedBreakawayShare({ diameter: mm(24), pitch: mm(3) }, 0.125, 0.9, 1.5)).toBeCloseTo(0.99, 2);
 */
export function agedBreakawayShare(size: ThreadSize, nutFactor: number, preloadLeft: number, frictionGrowth: number): number {
  const s = leadShare(size, nutFactor);
  return preloadLeft * ((1 - s) * frictionGrowth - s);
}

/**
 * Growth of friction at which breakaway equals the tightening torque: φ = (1/f + s)/(1 − s).
 *
 * @example
 * expect(evenBreakawayGrowth({ diameter: mm(24), pitch: mm(3) }, 0.125)).toBeCloseTo(1.38, 2);
 */
export function evenBreakawayGrowth(size: ThreadSize, nutFactor: number, preloadLeft = 1): number {
  const s = leadShare(size, nutFactor);
  return (1 / preloadLeft + s) / (1 - s);
}

/**
 * Preload from the torques that move a nut a hair on and a hair off: F = π·(T_on − T_off)/P, N.
 *
 * A small difference of large figures: see {@link onOffUncertainty} before trusting it. Source: W. Eccles, LUBMAT 2014.
 *
 * @example
 * expect(inKilonewton(onOffPreload(Nm(800), Nm(545), mm(3)))).toBeCloseTo(267, 0);
 */
export const onOffPreload = (on: NewtonMillimetre, off: NewtonMillimetre, pitch: Millimetre): Newton => N((Math.PI * (on - off)) / pitch);

/**
 * Relative standard uncertainty of that preload when both torques have the relative uncertainty u: u·√(T_on² + T_off²)/(T_on − T_off).
 *
 * @example
 * expect(onOffUncertainty(Nm(800), Nm(545), 0.02)).toBeCloseTo(0.0759, 4);
 */
export const onOffUncertainty = (on: NewtonMillimetre, off: NewtonMillimetre, each: number): number =>
  (each * Math.hypot(on, off)) / (on - off);

/** Can a tool break a nut loose? Breakaway stays inside the share of its largest torque that may be used (common practice, no source: 85 to 90 %). */
export const toolBreaksLoose = (tightening: NewtonMillimetre, breakawayShare: number, largest: NewtonMillimetre, usable: number): boolean =>
  tightening * breakawayShare <= usable * largest;

/**
 * Work to loosen one bolt, J: a triangle over the angle that unloads it, then turns against the running torque.
 *
 *     W = ½·T_break·θ + T_free·2π·n
 *
 * @example
 * expect(looseningWork(Nm(1040), degrees(60), 10, Nm(1))).toBeCloseTo(607.4, 1);
 */
export const looseningWork = (breakaway: NewtonMillimetre, unloading: number, freeTurns: number, running: NewtonMillimetre): number =>
  tighteningWork({ from: breakaway, to: Nmm(0), ramp: rad(unloading), freeTurns, running });
