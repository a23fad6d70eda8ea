import { type Millimetre, mm } from '../quantity.ts';

/**
 * Mean diameter of a bearing face: D_Km = (d_w + d_h)/2, mm.
 *
 * - d_w outer diameter of the face (minimum washer-face diameter of the head or nut), d_h clearance hole
 *
 * Source: VDI 2230-1:2015; ISO 16047:2005 (D_b).
 *
 * @example
 * expect(bearingDiameter(mm(33.61), mm(26))).toBeCloseTo(29.805, 3);
 */
export const bearingDiameter = (outer: Millimetre, hole: Millimetre): Millimetre => mm((outer + hole) / 2);
