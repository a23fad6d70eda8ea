import { type Millimetre, mm, N, type Newton, type NewtonMillimetre, Nmm } from '../quantity.ts';
import { equalSplit, type Friction } from './friction.ts';
import { type ThreadSize, threadArm, type WedgeForm } from './thread-arm.ts';

/** A figure together with whether it had to assume how a nut factor divides between thread and bearing face. */
export interface Estimate<T> {
  readonly value: T;
  readonly estimate: boolean;
}

/** Friction as a pair of coefficients: as given, or a nut factor split evenly. */
function coefficients(friction: Friction, size: ThreadSize): { thread: number; bearing: number; bearingDiameter: Millimetre } {
  if (friction.kind === 'coefficients') return friction;
  const bearingDiameter = mm(1.3 * size.diameter);
  const even = equalSplit(friction.k, size, bearingDiameter);
  return { thread: even, bearing: even, bearingDiameter };
}

/**
 * Torque arm of the whole assembly: wrench torque per unit of bolt force, mm.
 *
 *     by nut factor        k·d
 *     by coefficients      thread arm + μ_K·D_Km/2
 */
export function torqueArm(friction: Friction, size: ThreadSize, form: WedgeForm = 'exact'): Millimetre {
  if (friction.kind === 'nut factor') return mm(friction.k * size.diameter);
  return mm(threadArm(size, friction.thread, form) + (friction.bearing * friction.bearingDiameter) / 2);
}

/**
 * Torque that turns a fastener up to a preload: T = F·arm, N·mm.
 *
 * - by nut factor: T = k·F·d
 * - by coefficients: T = F·[d₂/2·tan(φ + ρ′) + μ_K·D_Km/2]
 *
 * Valid for: elastic range, no prevailing torque (add the nut's own). The scatter of friction is far larger than any difference of form.
 * Source: VDI 2230-1:2015 eq. R13/1; ISO 16047:2005; EN 1090-2:2018 8.5.2 (k_m).
 *
 * @example
 * const m24 = { diameter: mm(24), pitch: mm(3) };
 * const lot = byNutFactor(0.13, { standard: 'certificate', provenance: 'certificate' });
 * expect(inNewtonMetre(torqueForPreload(lot, m24, kN(247.1)))).toBeCloseTo(771, 0);
 */
export const torqueForPreload = (friction: Friction, size: ThreadSize, preload: Newton, form: WedgeForm = 'exact'): NewtonMillimetre =>
  Nmm(preload * torqueArm(friction, size, form));

/**
 * Preload a torque gives: F = T/arm, N. The inverse of {@link torqueForPreload}.
 *
 * @example
 * const m24 = { diameter: mm(24), pitch: mm(3) };
 * const lot = byNutFactor(0.13, { standard: 'certificate', provenance: 'certificate' });
 * expect(inKilonewton(preloadForTorque(lot, m24, Nm(771)))).toBeCloseTo(247.1, 1);
 */
export const preloadForTorque = (friction: Friction, size: ThreadSize, torque: NewtonMillimetre, form: WedgeForm = 'exact'): Newton =>
  N(torque / torqueArm(friction, size, form));

/**
 * Torque that starts to loosen a freshly tightened nut, with the friction it was tightened with.
 *
 *     M_L = F·[d₂/2·tan(ρ′ − φ) + μ_K·D_Km/2]
 *
 * Purely geometric: an aged, painted or corroded nut may need far more. By nut factor: an estimate from an even split.
 * Source: VDI 2230-1:2015.
 *
 * @example
 * const m6 = { diameter: mm(6), pitch: mm(1) };
 * const friction = byCoefficients(0.1, 0.1, mm(7.74), { standard: 'VDI 2230-1', provenance: 'published' });
 * expect(inNewtonMetre(looseningTorque(friction, m6, kN(9)).value)).toBeCloseTo(4.82, 2);
 */
export function looseningTorque(
  friction: Friction,
  size: ThreadSize,
  preload: Newton,
  form: WedgeForm = 'exact',
): Estimate<NewtonMillimetre> {
  const { thread, bearing, bearingDiameter } = coefficients(friction, size);
  const arm = threadArm(size, thread, form, 'loosening') + (bearing * bearingDiameter) / 2;
  return { value: Nmm(preload * arm), estimate: friction.kind === 'nut factor' };
}

/**
 * The part of the wrench torque that twists the shank: M_G = F·d₂/2·tan(φ + ρ′), N·mm. Only the thread's part reaches it.
 * By nut factor: an estimate from an even split.
 */
export function shankTorsion(friction: Friction, size: ThreadSize, preload: Newton, form: WedgeForm = 'exact'): Estimate<NewtonMillimetre> {
  const { thread } = coefficients(friction, size);
  return { value: Nmm(preload * threadArm(size, thread, form)), estimate: friction.kind === 'nut factor' };
}

/** Where the wrench torque goes, as shares of it that add up to one. */
export interface TorqueSplit {
  /** turned into bolt force: P/2π */
  readonly lead: number;
  readonly threadFriction: number;
  readonly bearingFriction: number;
  readonly estimate: boolean;
}

/**
 * Where the wrench torque goes: useful lead F·P/2π, thread friction, friction under the turning face.
 *
 * @example
 * const m12 = { diameter: mm(12), pitch: mm(1.75) };
 * const split = torqueSplit(byCoefficients(0.12, 0.12, mm(15.5), { standard: 'VDI 2230-1', provenance: 'published' }), m12);
 * expect(split.lead).toBeCloseTo(0.142, 2);
 */
export function torqueSplit(friction: Friction, size: ThreadSize, form: WedgeForm = 'exact'): TorqueSplit {
  const { thread, bearing, bearingDiameter } = coefficients(friction, size);
  const lead = size.pitch / (2 * Math.PI);
  const inThread = threadArm(size, thread, form);
  const underFace = (bearing * bearingDiameter) / 2;
  const whole = inThread + underFace;
  return {
    lead: lead / whole,
    threadFriction: (inThread - lead) / whole,
    bearingFriction: underFace / whole,
    estimate: friction.kind === 'nut factor',
  };
}
