import { pitchDiameter, type Thread } from '../fasteners/thread.ts';
import { type Millimetre, mm, type Radian, rad } from '../quantity.ts';

/** What torque and stress need of a thread; without a series it is taken as metric. */
export type ThreadSize = Pick<Thread, 'diameter' | 'pitch'> & Partial<Pick<Thread, 'series'>>;

/** How the wedge of the thread is written: as it is, linearised as printed in the standards, or with their rounded constants. */
export type WedgeForm = 'exact' | 'linear' | 'short';

/**
 * Lead angle at the pitch diameter: φ = atan(P / (π·d₂)), rad.
 *
 * @example
 * expect(inDegrees(leadAngle({ diameter: mm(8), pitch: mm(1.25) }))).toBeCloseTo(3.168, 3);
 */
export const leadAngle = ({ diameter, pitch }: ThreadSize): Radian => rad(Math.atan(pitch / (Math.PI * pitchDiameter(diameter, pitch))));

/** Angle of friction on the 30° flank: ρ′ = atan(μ_G / cos 30°), rad. */
export const flankFrictionAngle = (threadFriction: number): Radian => rad(Math.atan(threadFriction / Math.cos(Math.PI / 6)));

/**
 * Torque arm of the thread: thread torque per unit of bolt force, mm.
 *
 *     exact     d₂/2 · tan(ρ′ ± φ)
 *     linear    μ_G·d₂/(2·cos 30°) ± P/2π
 *     short     0.58·d₂·μ_G ± 0.16·P
 *
 * `+` while tightening, `−` while loosening. Negative when loosening: the thread is not self-locking and unwinds by itself.
 *
 * Valid for: single-start 60° threads, no prevailing torque. Linear and short read up to 1 % low for μ ≤ 0.24.
 * Source: VDI 2230-1:2015 section 5.4.2 (short: eq. R13/2); ISO 16047:2005 (linear); Kellermann & Klein 1955 (exact).
 *
 * @example
 * const m12 = { diameter: mm(12), pitch: mm(1.75) };
 * expect(threadArm(m12, 0.12)).toBeCloseTo(1.037, 2);
 * expect(threadArm(m12, 0.12, 'linear')).toBeCloseTo(1.031, 2);
 * expect(threadArm(m12, 0.12, 'exact', 'loosening')).toBeLessThan(threadArm(m12, 0.12));
 */
export function threadArm(
  size: ThreadSize,
  threadFriction: number,
  form: WedgeForm = 'exact',
  direction: 'tightening' | 'loosening' = 'tightening',
): Millimetre {
  const d2 = pitchDiameter(size.diameter, size.pitch);
  const sign = direction === 'tightening' ? 1 : -1;
  switch (form) {
    case 'exact':
      return mm((d2 / 2) * Math.tan(flankFrictionAngle(threadFriction) + sign * leadAngle(size)));
    case 'linear':
      return mm((threadFriction * d2) / (2 * Math.cos(Math.PI / 6)) + (sign * size.pitch) / (2 * Math.PI));
    case 'short':
      return mm(0.58 * d2 * threadFriction + sign * 0.16 * size.pitch);
  }
}

/**
 * Thread friction below which a preloaded bolt unwinds by itself: μ = tan φ · cos 30°.
 *
 * @example
 * expect(selfLockingFriction({ diameter: mm(6), pitch: mm(1) })).toBeCloseTo(0.0515, 4);
 */
export const selfLockingFriction = (size: ThreadSize): number => Math.tan(leadAngle(size)) * Math.cos(Math.PI / 6);
