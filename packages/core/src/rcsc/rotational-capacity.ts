import { inKip, inLbfFt, kip, lbfFt, type Millimetre, N, type Newton, type NewtonMillimetre, Nmm, type Radian, rad } from '../quantity.ts';
import type { Source } from '../source.ts';
import { ROTATIONAL_CAPACITY_NUT_FACTOR } from '../torque/nut-factor.ts';

export const rotationalCapacitySource: Source = {
  standard: 'FHWA/AASHTO rotational-capacity test',
  edition: '2005',
  clause: 'long and short bolts',
  provenance: 'published',
};

/** Assemblies tested of each combination of lots. */
export const ROTATIONAL_CAPACITY_ASSEMBLIES = 2;
/** What the initial tension may lie above its value. */
export const INITIAL_TENSION_PLUS = kip(2);

const nearestKip = (force: Newton): Newton => kip(Math.round(inKip(force)));

/**
 * Initial tension of the test: about a tenth of the minimum pretension, nearest kip, −0/+2 kip.
 *
 * @example
 * expect(inKip(initialTestTension(kip(39)))).toBeCloseTo(4, 6);
 */
export const initialTestTension = (minimum: Newton): Newton => nearestKip(N(0.1 * minimum + 1e-6));

/**
 * Tension that must be left after twice the installation turn: 1.15·T_m, nearest kip. No assembly may strip or fracture on the way.
 *
 * @example
 * expect(inKip(turnTestTension(kip(39)))).toBeCloseTo(45, 6);
 */
export const turnTestTension = (minimum: Newton): Newton => nearestKip(N(1.15 * minimum));

/**
 * Greatest torque while the nut moves at the measured tension: T ≤ 0.25·P·D. In the printed form P is in lbf and D in feet.
 *
 * @example
 * expect(inLbfFt(greatestTestTorque(lbf(40000), inch(7 / 8)))).toBeCloseTo(729.2, 1);
 */
export const greatestTestTorque = (tension: Newton, diameter: Millimetre): NewtonMillimetre =>
  Nmm(ROTATIONAL_CAPACITY_NUT_FACTOR * tension * diameter);

/**
 * The same for bolts too short for the calibrator, at the installation turn, with P the turn-test tension: nearest 10 lbf·ft.
 *
 * @example
 * expect(inLbfFt(greatestShortBoltTorque(kip(45), inch(7 / 8)))).toBeCloseTo(820, 6);
 */
export const greatestShortBoltTorque = (tension: Newton, diameter: Millimetre): NewtonMillimetre =>
  lbfFt(Math.round(inLbfFt(greatestTestTorque(tension, diameter)) / 10) * 10);

/** Rotation of the test from the initial tension: twice the installation turn. */
export const testRotation = (installationTurn: Radian): Radian => rad(2 * installationTurn);

/** What one assembly showed. */
export interface RotationalCapacityReading {
  readonly torque: NewtonMillimetre;
  readonly torqueLimit: NewtonMillimetre;
  /** tension after the full rotation and what it must reach; absent while only the torque is judged, and on short bolts */
  readonly tension?: { readonly reached: Newton; readonly needed: Newton };
  readonly damaged?: boolean;
}

/**
 * Did one assembly pass? Torque within its limit, tension reached, neither stripped nor broken. Any one failure rejects the combination of lots.
 *
 * @example
 * expect(passesRotationalCapacity({ torque: lbfFt(600), torqueLimit: lbfFt(729.2) })).toBe(true);
 * expect(passesRotationalCapacity({ torque: lbfFt(600), torqueLimit: lbfFt(729.2), damaged: true })).toBe(false);
 */
export const passesRotationalCapacity = ({ torque, torqueLimit, tension, damaged = false }: RotationalCapacityReading): boolean =>
  torque <= torqueLimit && (tension === undefined || tension.reached >= tension.needed) && !damaged;
