import type { Megapascal, Millimetre, Newton, NewtonMillimetre } from '../quantity.ts';
import { MPa, N, Nmm } from '../quantity.ts';
import type { Source } from '../source.ts';

/** What pushes on a gate valve's stem. */
export interface GateLoad {
  readonly seat: Millimetre;
  readonly stem: Millimetre;
  readonly differential: Megapascal;
  readonly line: Megapascal;
  /** friction of the gate on its seats, with its wedge: 0.3 to 0.5 */
  readonly valveFactor: number;
  readonly packing: Newton;
}

export const VALVE_SOURCE: Source = {
  standard: 'NRC Information Notice 92-41 and course material on motor-operated valves',
  provenance: 'published',
};

const circle = (diameter: number) => (Math.PI / 4) * diameter ** 2;

/**
 * Stem thrust of a gate valve: packing + valve factor·seat area·Δp ± stem area·line pressure. The line pushes the stem out: against
 * closing, with opening. Unwedging a gate that was shut hard may need more.
 *
 * Source: {@link VALVE_SOURCE}.
 *
 * @example
 * const load = { seat: mm(150), stem: mm(28), differential: MPa(1.6), line: MPa(1.6), valveFactor: 0.4, packing: N(7000) };
 * expect(stemThrust(load, 'closing')).toBeCloseTo(19_294.9, 1);
 */
export function stemThrust({ seat, stem, differential, line, valveFactor, packing }: GateLoad, way: 'opening' | 'closing'): Newton {
  const rejection = circle(stem) * line;
  return N(packing + valveFactor * circle(seat) * differential + (way === 'closing' ? rejection : -rejection));
}

/** A stem thread; trapezoidal 15°, ACME 14.5° half angle. */
export interface StemThread {
  readonly outside: Millimetre;
  readonly pitch: Millimetre;
  readonly starts: number;
  readonly halfAngle: number;
}

const pitchDiameterOf = ({ outside, pitch }: StemThread): number => outside - pitch / 2;
export const stemLead = ({ pitch, starts }: Pick<StemThread, 'pitch' | 'starts'>): number => pitch * starts;
/** Lead angle of a stem thread, rad. The stem holds by itself where friction/cos(half angle) exceeds its tangent. */
export const stemLeadAngle = (thread: StemThread): number => Math.atan(stemLead(thread) / (Math.PI * pitchDiameterOf(thread)));

/**
 * Stem factor: torque over thrust, mm.
 *
 *     d₂/2·(cos α·tan λ + μ)/(cos α − μ·tan λ),  d₂ = d − P/2
 *
 * - α half angle of the thread, λ lead angle, μ friction of stem and nut (0.15 or 0.20: utilities differ)
 *
 * Source: power-screw relation, as used for motor-operated valves; ISO 2904 for trapezoidal threads.
 *
 * @example
 * expect(stemFactor({ outside: mm(28), pitch: mm(5), starts: 1, halfAngle: Math.PI / 12 }, 0.15)).toBeCloseTo(2.80291, 4);
 */
export function stemFactor(thread: StemThread, friction: number): Millimetre {
  const [cosine, tangent] = [Math.cos(thread.halfAngle), Math.tan(stemLeadAngle(thread))];
  return ((pitchDiameterOf(thread) / 2) * ((cosine * tangent + friction) / (cosine - friction * tangent))) as Millimetre;
}

/**
 * Stem factor where the thrust helps, as a stem that the line pushes out while it is opened, mm:
 *
 *     d₂/2·(μ − cos α·tan λ)/(cos α + μ·tan λ),  not below 0: such a stem runs by itself
 *
 * Source: power-screw relation, lowering a load.
 *
 * @example
 * expect(helpedStemFactor({ outside: mm(25), pitch: mm(5), starts: 1, halfAngle: 0 }, 0.09)).toBeCloseTo(0.215, 3);
 */
export function helpedStemFactor(thread: StemThread, friction: number): Millimetre {
  const [cosine, tangent] = [Math.cos(thread.halfAngle), Math.tan(stemLeadAngle(thread))];
  const factor = (friction - cosine * tangent) / (cosine + friction * tangent);
  return ((pitchDiameterOf(thread) / 2) * Math.max(0, factor)) as Millimetre;
}

/** Torque that moves a stem against its thrust, or with it where the thrust is below zero, N·mm. */
export const movingTorque = (thrust: Newton, thread: StemThread, friction: number): NewtonMillimetre =>
  thrust >= 0 ? stemTorque(thrust, stemFactor(thread, friction)) : stemTorque(N(Math.abs(thrust)), helpedStemFactor(thread, friction));

/** Torque on the handwheel nut, N·mm. */
export const stemTorque = (thrust: Newton, factor: Millimetre): NewtonMillimetre => Nmm(thrust * factor);
/** Turns for a stroke: stroke over lead. */
export const turnsOfStroke = (stroke: Millimetre, lead: number): number => stroke / lead;
/**
 * Turns of a waterworks gate valve by its nominal size in inches: 3·n + 2 to 3·n + 3. A rule of thumb for valves whose stem cannot be seen.
 *
 * Source: waterworks operators' rule; Kansas Rural Water Association, November 2011 (8 in: 27 turns).
 *
 * @example
 * expect(waterworksTurns(8)).toEqual({ low: 26, high: 27 });
 */
export const waterworksTurns = (inches: number): { readonly low: number; readonly high: number } => ({
  low: 3 * inches + 2,
  high: 3 * inches + 3,
});
/** Force at the rim, both hands together: 2·T/D, N. */
export const rimForce = (torque: NewtonMillimetre, wheel: Millimetre): Newton => N((2 * torque) / wheel);
/** Shear stress in a stem: 16·T/(π·d³), d root diameter. */
export const stemStress = (torque: NewtonMillimetre, root: Millimetre): Megapascal => MPa((16 * torque) / (Math.PI * root ** 3));

/** What one person pulls on a wheel or lever, for comparison. Source: MSS SP-91: about 670 N on 300 mm. */
export const PERSON = { force: N(670), lever: 300 as Millimetre } as const;

/**
 * Work of a stroke, J: running torque over all turns, and the extra of seating over the last of them.
 *
 * @example
 * expect(strokeWork({ running: Nm(60), turns: 20, seating: Nm(150), seatingTurns: 0.1 })).toBeCloseTo(7634.07, 2);
 */
export const strokeWork = (of: {
  readonly running: NewtonMillimetre;
  readonly turns: number;
  readonly seating: NewtonMillimetre;
  readonly seatingTurns: number;
}): number => (2 * Math.PI * (of.running * of.turns + of.seating * of.seatingTurns)) / 1000;
