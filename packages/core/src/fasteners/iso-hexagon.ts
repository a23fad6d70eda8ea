import { type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

/** Hexagon head and regular nut of one size, mm. */
export interface IsoHexagon {
  readonly acrossFlats: Millimetre;
  /** nominal head height k */
  readonly headHeight: Millimetre;
  /** minimum washer-face diameter d_w of the head, product grade A (to M24) and B */
  readonly bearingFaceA?: Millimetre;
  readonly bearingFaceB: Millimetre;
  /** maximum and minimum height m of the style 1 nut */
  readonly nutHeight: Millimetre;
  readonly nutHeightMin: Millimetre;
}

/** Widths and heights of ISO 4014/4017 heads and ISO 4032 nuts. s, k, m: published; d_w and smallest nut height: memory. */
export const isoHexagonSource: Source = { standard: 'ISO 4014, ISO 4017, ISO 4032', edition: '2011, 2012', provenance: 'published' };

/** d: s, k, d_w,min grade A (0 where not made), d_w,min grade B, m_max, m_min */
const ROWS: readonly (readonly [d: number, s: number, k: number, dwA: number, dwB: number, m: number, mMin: number])[] = [
  [3, 5.5, 2, 4.57, 4.45, 2.4, 2.15],
  [3.5, 6, 2.4, 5.07, 4.95, 2.8, 2.55],
  [4, 7, 2.8, 5.88, 5.74, 3.2, 2.9],
  [5, 8, 3.5, 6.88, 6.74, 4.7, 4.4],
  [6, 10, 4, 8.88, 8.74, 5.2, 4.9],
  [8, 13, 5.3, 11.63, 11.47, 6.8, 6.44],
  [10, 16, 6.4, 14.63, 14.47, 8.4, 8.04],
  [12, 18, 7.5, 16.63, 16.47, 10.8, 10.37],
  [14, 21, 8.8, 19.37, 19.15, 12.8, 12.1],
  [16, 24, 10, 22.49, 22, 14.8, 14.1],
  [18, 27, 11.5, 25.34, 24.85, 15.8, 15.1],
  [20, 30, 12.5, 28.19, 27.7, 18, 16.9],
  [22, 34, 14, 31.71, 31.35, 19.4, 18.1],
  [24, 36, 15, 33.61, 33.25, 21.5, 20.2],
  [27, 41, 17, 0, 38, 23.8, 22.5],
  [30, 46, 18.7, 0, 42.75, 25.6, 24.3],
  [33, 50, 21, 0, 46.55, 28.7, 27.4],
  [36, 55, 22.5, 0, 51.11, 31, 29.4],
  [39, 60, 25, 0, 55.86, 33.4, 31.8],
  [42, 65, 26, 0, 59.95, 34, 32.4],
  [45, 70, 28, 0, 64.7, 36, 34.4],
  [48, 75, 30, 0, 69.45, 38, 36.4],
  [52, 80, 33, 0, 74.2, 42, 40.4],
  [56, 85, 35, 0, 78.66, 45, 43.4],
  [60, 90, 38, 0, 83.41, 48, 46.4],
  [64, 95, 40, 0, 88.16, 51, 49.1],
];

const TABLE: ReadonlyMap<number, IsoHexagon> = new Map(
  ROWS.map(([d, s, k, dwA, dwB, m, mMin]) => [
    d,
    {
      acrossFlats: mm(s),
      headHeight: mm(k),
      ...(dwA > 0 ? { bearingFaceA: mm(dwA) } : {}),
      bearingFaceB: mm(dwB),
      nutHeight: mm(m),
      nutHeightMin: mm(mMin),
    },
  ]),
);

/**
 * ISO hexagon head and nut by nominal diameter, M3 to M64; `undefined` where the standards list none.
 * Withdrawn national widths differ at M10, M12, M14, M22.
 *
 * @example
 * expect(isoHexagon(mm(24)).acrossFlats).toBe(36);
 */
export const isoHexagon = (diameter: Millimetre): IsoHexagon | undefined => TABLE.get(diameter);

/**
 * Reference thread length of a partly threaded bolt: b = 2d + 6 up to 125 mm long, 2d + 12 up to 200 mm, 2d + 25 above. mm.
 * Source: ISO 888:2012, ISO 4014:2011; EN 14399-3:2015 uses the same lengths.
 *
 * @example
 * expect(isoThreadLength(mm(20), mm(100))).toBe(46);
 */
export const isoThreadLength = (diameter: Millimetre, length: Millimetre): Millimetre =>
  mm(2 * diameter + (length <= 125 ? 6 : length <= 200 ? 12 : 25));
