import { type Millimetre, mm, N, type Newton, type NewtonMillimetre, Nmm } from '../quantity.ts';
import type { Source } from '../source.ts';

export const en1591Source: Source = { standard: 'EN 1591-1', edition: '2013', clause: 'annex B', provenance: 'memory' };

/** Ways of tightening as EN 1591-1 annex B tells them apart. */
export type FlangeTightening =
  | 'wrench by feel'
  | 'impact wrench'
  | 'torque wrench'
  | 'tensioner by pressure'
  | 'tensioner by elongation'
  | 'elongation measured'
  | 'turn of nut near yield'
  | 'torque and turn near yield';

/** Relative scatter of one bolt's initial force about the nominal: down and up. */
export interface Scatter {
  readonly minus: number;
  readonly plus: number;
}

/** constant + 0.5·μ where friction matters */
const SCATTER: Readonly<Record<FlangeTightening, { readonly minus: number; readonly plus: number; readonly perFriction: number }>> = {
  'wrench by feel': { minus: 0.3, plus: 0.3, perFriction: 0.5 },
  'impact wrench': { minus: 0.2, plus: 0.2, perFriction: 0.5 },
  'torque wrench': { minus: 0.1, plus: 0.1, perFriction: 0.5 },
  'tensioner by pressure': { minus: 0.2, plus: 0.4, perFriction: 0 },
  'tensioner by elongation': { minus: 0.15, plus: 0.15, perFriction: 0 },
  'elongation measured': { minus: 0.15, plus: 0.15, perFriction: 0 },
  'turn of nut near yield': { minus: 0.1, plus: 0.1, perFriction: 0 },
  'torque and turn near yield': { minus: 0.07, plus: 0.07, perFriction: 0 },
};

/**
 * Scatter of the initial force of a single bolt: ε₁ = c + 0.5·μ for wrenches, a fixed value otherwise.
 *
 * - μ coefficient of friction; has no effect on tensioners, elongation and turn
 *
 * Source: EN 1591-1:2013 annex B Table B.1, from memory.
 *
 * @example
 * expect(singleBoltScatter('torque wrench', 0.12).plus).toBeCloseTo(0.16, 10);
 * expect(singleBoltScatter('tensioner by pressure')).toEqual({ minus: 0.2, plus: 0.4 });
 */
export function singleBoltScatter(method: FlangeTightening, friction = 0): Scatter {
  const { minus, plus, perFriction } = SCATTER[method];
  return { minus: minus + perFriction * friction, plus: plus + perFriction * friction };
}

/**
 * Scatter of the total force of all bolts of a flange.
 *
 *     ε = ε₁·(1 + 3/√n)/4
 *
 * - ε₁ scatter of one bolt; n number of bolts, at least 1
 *
 * Source: EN 1591-1:2013 annex B.
 *
 * @example
 * expect(groupScatter(0.16, 8)).toBeCloseTo(0.0824, 4);
 */
export const groupScatter = (single: number, bolts: number): number => (single * (1 + 3 / Math.sqrt(bolts))) / 4;

/**
 * Least nominal total force that still reaches the required one: F_nom = F_req/(1 − ε₋), N. Source: EN 1591-1:2013.
 *
 * @example
 * expect(inKilonewton(leastNominalForce(kN(120), 0.0746))).toBeCloseTo(129.67, 1);
 */
export const leastNominalForce = (required: Newton, minus: number): Newton => N(required / (1 - minus));

/**
 * Greatest total force the nominal one may turn out as: F_max = F_nom·(1 + ε₊), N. Source: EN 1591-1:2013.
 *
 * @example
 * expect(inKilonewton(greatestForce(kN(120), 0.0746))).toBeCloseTo(128.95, 2);
 */
export const greatestForce = (nominal: Newton, plus: number): Newton => N(nominal * (1 + plus));

/**
 * Torque arm of a flange bolt: k_B = 0.16·p + 1.17·μ·d, mm.
 *
 * - p pitch, d bolt diameter, mm; μ one coefficient for thread and nut face
 *
 * Valid for: ISO threads, usual nut faces. Source: EN 1591-1:2013 eq. (D.5).
 *
 * @example
 * expect(flangeTorqueArm({ diameter: mm(16), pitch: mm(2) }, 0.12)).toBeCloseTo(2.566, 3);
 */
export const flangeTorqueArm = (size: { readonly diameter: Millimetre; readonly pitch: Millimetre }, friction: number): Millimetre =>
  mm(0.16 * size.pitch + 1.17 * friction * size.diameter);

/**
 * Torque for each bolt from the total nominal force of the flange: M_t = k_B·F_nom/n, N·mm. Source: EN 1591-1:2013 eq. (D.2).
 *
 * @example
 * const arm = flangeTorqueArm({ diameter: mm(16), pitch: mm(2) }, 0.12);
 * expect(inNewtonMetre(flangeTorque(kN(320), 8, arm))).toBeCloseTo(102.7, 1);
 */
export const flangeTorque = (nominal: Newton, bolts: number, arm: Millimetre): NewtonMillimetre => Nmm((nominal * arm) / bolts);
