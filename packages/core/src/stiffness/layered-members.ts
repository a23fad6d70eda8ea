import { type Megapascal, type Millimetre, mm } from '../quantity.ts';
import { coneFace, frustumEnd, frustumStiffness, inSeries, type Stiffness } from './frusta.ts';

/** One clamped part of the grip, from head to nut. */
export interface Layer {
  readonly modulus: Megapascal;
  readonly thickness: Millimetre;
}

/**
 * Stiffness of a grip of several layers: cones of 30° from both ends meet in the middle of the grip, cut where the material changes.
 *
 * - the last layer of a cap screw is the part of the tapped piece within the effective grip, see `tappedGrip`
 *
 * Source: Shigley's Mechanical Engineering Design, 9th edition, 8-5, Examples 8-2 and 8-5.
 *
 * @example
 * const layers = [[30e6, 0.595], [14.5e6, 0.75]].map(([modulus, thickness]) => ({ modulus: psi(modulus), thickness: inch(thickness) }));
 * expect(inLbf(layeredStiffness(inch(0.5), layers) * 25.4) / 1e6).toBeCloseTo(9.378, 1);
 */
export function layeredStiffness(diameter: Millimetre, layers: readonly Layer[], face: Millimetre = coneFace(diameter)): Stiffness {
  const half = layers.reduce((sum, { thickness }) => sum + thickness, 0) / 2;
  return inSeries(...cones(diameter, layers, face, half), ...cones(diameter, layers.toReversed(), face, half));
}

/** The frusta from one end down to the middle. */
function cones(diameter: Millimetre, layers: readonly Layer[], face: Millimetre, half: number): readonly Stiffness[] {
  const found: Stiffness[] = [];
  let depth = 0;
  for (const { modulus, thickness } of layers) {
    const piece = Math.min(thickness, half - depth);
    if (piece > 1e-9) found.push(frustumStiffness({ modulus, diameter, thickness: mm(piece), face: frustumEnd(face, mm(depth)) }));
    depth += thickness;
  }
  return found;
}
