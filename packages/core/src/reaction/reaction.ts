import { type Megapascal, type Millimetre, MPa, N, type Newton, type NewtonMillimetre, Nmm, type Radian } from '../quantity.ts';

/**
 * Force of a reaction arm on its point: F = T/L, N. The same force pushes sideways on drive, socket, nut and bolt.
 *
 * - T torque, N·mm; L square from the bolt axis to the contact, mm
 *
 * The foot pushes against the turning of the socket: while tightening clockwise it bears counter-clockwise, and the other way
 * round while loosening. Source: statics.
 *
 * @example
 * expect(reactionForce(Nm(400), mm(120))).toBeCloseTo(3333.3, 1);
 */
export const reactionForce = (torque: NewtonMillimetre, arm: Millimetre): Newton => N(torque / arm);

/**
 * A contact face out of square by α: the force normal to it, F/cos α, and the thrust along the arm, F·tan α, that slides the foot off.
 *
 * @example
 * expect(skewContact(N(5333.3), degrees(10)).thrust).toBeCloseTo(940.4, 1);
 */
export const skewContact = (force: Newton, skew: Radian): { readonly normal: Newton; readonly thrust: Newton } => ({
  normal: N(force / Math.cos(skew)),
  thrust: N(force * Math.tan(skew)),
});

/**
 * Tilting moment when the foot lies out of the plane of the nut by `offset`: M = F·h, N·mm. Socket, nut and bolt end carry it.
 *
 * @example
 * expect(inNewtonMetre(tiltingMoment(reactionForce(Nm(800), mm(150)), mm(30)))).toBeCloseTo(160, 6);
 */
export const tiltingMoment = (force: Newton, offset: Millimetre): NewtonMillimetre => Nmm(force * offset);

/**
 * Bending stress if the bolt took a moment alone: σ = 32·M/(π·d₃³), MPa; an upper bound that shows why the foot belongs in the
 * plane of the nut.
 *
 * @example
 * expect(boltBending(Nm(160), rootDiameter(mm(24), mm(3)))).toBeCloseTo(194.3, 1);
 */
export const boltBending = (moment: NewtonMillimetre, root: Millimetre): Megapascal => MPa((32 * moment) / (Math.PI * root ** 3));
