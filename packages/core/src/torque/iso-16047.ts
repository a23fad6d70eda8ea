import { pitchDiameter } from '../fasteners/thread.ts';
import type { Millimetre, Newton, NewtonMillimetre } from '../quantity.ts';
import type { ThreadSize } from './thread-arm.ts';

/** 1/(2·cos 30°), printed as 0.577. */
const FLANK = 1 / (2 * Math.cos(Math.PI / 6));

/**
 * Torque coefficient, or nut factor: K = T/(F·d). Source: ISO 16047:2005.
 *
 * @example
 * expect(torqueCoefficient(Nm(250), kN(110), mm(16))).toBeCloseTo(0.142, 3);
 */
export const torqueCoefficient = (torque: NewtonMillimetre, preload: Newton, diameter: Millimetre): number => torque / (preload * diameter);

/**
 * Total coefficient of friction from a torque–preload test.
 *
 *     μ_tot = (T/F − P/2π) / (0.577·d₂ + 0.5·D_b)
 *
 * Source: ISO 16047:2005.
 *
 * @example
 * expect(totalFriction(Nm(250), kN(110), { diameter: mm(16), pitch: mm(2) }, mm(21.2))).toBeCloseTo(0.1024, 4);
 */
export const totalFriction = (torque: NewtonMillimetre, preload: Newton, size: ThreadSize, bearingDiameter: Millimetre): number =>
  (torque / preload - size.pitch / (2 * Math.PI)) / (FLANK * pitchDiameter(size.diameter, size.pitch) + bearingDiameter / 2);

/**
 * Thread friction from the thread torque of a test: μ_th = (T_th/F − P/2π)/(0.577·d₂). Source: ISO 16047:2005.
 *
 * @example
 * expect(threadFrictionFrom(Nm(230), kN(150), { diameter: mm(20), pitch: mm(2.5) })).toBeCloseTo(0.1071, 3);
 */
export const threadFrictionFrom = (threadTorque: NewtonMillimetre, preload: Newton, size: ThreadSize): number =>
  (threadTorque / preload - size.pitch / (2 * Math.PI)) / (FLANK * pitchDiameter(size.diameter, size.pitch));

/**
 * Bearing friction from the bearing torque of a test: μ_b = T_b/(0.5·D_b·F). Source: ISO 16047:2005.
 *
 * @example
 * expect(bearingFrictionFrom(Nm(200), kN(150), mm(25.75))).toBeCloseTo(0.1036, 4);
 */
export const bearingFrictionFrom = (bearingTorque: NewtonMillimetre, preload: Newton, bearingDiameter: Millimetre): number =>
  bearingTorque / ((bearingDiameter / 2) * preload);
