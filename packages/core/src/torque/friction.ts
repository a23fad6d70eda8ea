import type { Thread } from '../fasteners/thread.ts';
import { pitchDiameter } from '../fasteners/thread.ts';
import type { Millimetre } from '../quantity.ts';
import { mm } from '../quantity.ts';
import type { Source } from '../source.ts';

/**
 * Friction of a fastener assembly while it turns: by nut factor k, or by the pair of coefficients. One type, two
 * constructors; everything downstream asks it for a torque or a preload and need not know which it is.
 */
export type Friction = NutFactorFriction | CoefficientFriction;

export interface NutFactorFriction {
  readonly kind: 'nut factor';
  /** k = T/(F·d); K of ISO 16047, k_m of EN 14399, the nut factor of flange practice */
  readonly k: number;
  /** coefficient of variation of k from bolt to bolt within the lot, where it was measured */
  readonly variation?: number;
  readonly source: Source;
}

export interface CoefficientFriction {
  readonly kind: 'coefficients';
  readonly thread: number;
  readonly bearing: number;
  /** mean diameter of the face that turns, D_Km or D_b */
  readonly bearingDiameter: Millimetre;
  readonly variation?: number;
  readonly source: Source;
}

export const byNutFactor = (k: number, source: Source, variation?: number): NutFactorFriction =>
  variation === undefined ? { kind: 'nut factor', k, source } : { kind: 'nut factor', k, source, variation };

export const byCoefficients = (
  thread: number,
  bearing: number,
  bearingDiameter: Millimetre,
  source: Source,
  variation?: number,
): CoefficientFriction => {
  const friction: CoefficientFriction = { kind: 'coefficients', thread, bearing, bearingDiameter, source };
  return variation === undefined ? friction : { ...friction, variation };
};

/**
 * The coefficients a nut factor stands for, if thread and bearing face had the same friction.
 *
 *     μ = (k·d − P/2π) / (0.577·d₂ + D_b/2)      0.577 = 1/(2·cos 30°)
 *
 * - D_b: mean bearing diameter, mm; 1.3·d where it is not known (hexagon bearing faces lie at 1.25 to 1.33 d)
 *
 * A nut factor alone does not say how the friction divides: what follows from this split is an estimate, and is shown as one.
 * Source: ISO 16047:2005, total coefficient of friction; 1.3 d: common practice, no source.
 *
 * @example
 * const m10 = { diameter: mm(10), pitch: mm(1.5) };
 * expect(equalSplit(0.2, m10, mm(12.815))).toBeCloseTo(0.1516, 3);
 */
export function equalSplit(
  k: number,
  thread: Pick<Thread, 'diameter' | 'pitch'>,
  bearingDiameter: Millimetre = mm(1.3 * thread.diameter),
): number {
  const lead = thread.pitch / (2 * Math.PI);
  const arm = pitchDiameter(thread.diameter, thread.pitch) / (2 * Math.cos(Math.PI / 6)) + bearingDiameter / 2;
  return (k * thread.diameter - lead) / arm;
}
