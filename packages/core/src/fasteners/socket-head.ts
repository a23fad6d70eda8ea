import { type Millimetre, mm } from '../quantity.ts';

/** ISO 4762:2004 Table 1 (published). */
const FACE: ReadonlyMap<number, number> = new Map([
  [3, 5.07],
  [4, 6.53],
  [5, 8.03],
  [6, 9.38],
  [8, 12.33],
  [10, 15.33],
  [12, 17.23],
  [14, 20.17],
  [16, 23.17],
  [20, 28.87],
  [24, 34.81],
  [30, 43.61],
  [36, 52.54],
  [42, 61.34],
  [48, 70.34],
  [56, 82.26],
  [64, 94.26],
]);

/**
 * Minimum diameter d_w of the bearing face of a hexagon socket head cap screw, mm. Source: ISO 4762:2004.
 *
 * @example
 * expect(bearingDiameter(socketHeadFace(mm(24)), iso273Hole(mm(24)).value.value)).toBeCloseTo(30.405, 3);
 */
export const socketHeadFace = (diameter: Millimetre): Millimetre | undefined => {
  const face = FACE.get(diameter);
  return face === undefined ? undefined : mm(face);
};
