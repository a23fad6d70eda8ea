import { type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

/** Structural head and nut of one size, mm. */
export interface StructuralHexagon {
  readonly acrossFlats: Millimetre;
  readonly headHeight: Millimetre;
  /** maximum */
  readonly nutHeight: Millimetre;
  /** minimum washer-face diameter of the head */
  readonly bearingFace: Millimetre;
  /** reference thread length; of HR for lengths up to 125 mm */
  readonly threadLength: Millimetre;
}

export const hrSource: Source = { standard: 'EN 14399-3', edition: '2015', clause: 'Table 2 and nut table', provenance: 'published' };
export const hvSource: Source = {
  standard: 'EN 14399-4',
  edition: '2015',
  clause: 'Table 2; nut height from memory',
  provenance: 'published',
};
export const hvLargeSource: Source = { standard: 'DASt-Ri 021', edition: '2013', clause: 'widths across flats', provenance: 'memory' };

type Row = readonly [d: number, s: number, k: number, m: number, dw: number, b: number];

/** System HR: regular nut, long thread. M14 and M18 are non-preferred. */
const HR: readonly Row[] = [
  [12, 22, 7.5, 10.8, 20.1, 30],
  [14, 24, 8.8, 12.8, 22, 34],
  [16, 27, 10, 14.8, 24.9, 38],
  [18, 30, 11.5, 15.8, 27.7, 42],
  [20, 32, 12.5, 18, 29.5, 46],
  [22, 36, 14, 19.4, 33.3, 50],
  [24, 41, 15, 21.5, 38, 54],
  [27, 46, 17, 23.8, 42.8, 60],
  [30, 50, 18.7, 25.6, 46.6, 66],
  [36, 60, 22.5, 31, 55.9, 78],
];

/** System HV: low nut (about 0.8 d), short thread. */
const HV: readonly Row[] = [
  [12, 22, 8, 10, 20.1, 23],
  [16, 27, 10, 13, 24.9, 28],
  [20, 32, 13, 16, 29.5, 33],
  [22, 36, 14, 18, 33.3, 34],
  [24, 41, 15, 20, 38, 39],
  [27, 46, 17, 22, 42.8, 41],
  [30, 50, 19, 24, 46.6, 44],
  [36, 60, 23, 29, 55.9, 52],
];

/** Large HV sets of tower flanges: width across flats only. */
const HV_LARGE: ReadonlyMap<number, number> = new Map([
  [39, 65],
  [42, 70],
  [45, 75],
  [48, 80],
  [56, 90],
  [64, 100],
  [72, 110],
]);

const table = (rows: readonly Row[]): ReadonlyMap<number, StructuralHexagon> =>
  new Map(
    rows.map(([d, s, k, m, dw, b]) => [
      d,
      { acrossFlats: mm(s), headHeight: mm(k), nutHeight: mm(m), bearingFace: mm(dw), threadLength: mm(b) },
    ]),
  );
const HR_TABLE = table(HR);
const HV_TABLE = table(HV);

/**
 * Head and nut of system HR, M12 to M36. Source: EN 14399-3:2015.
 *
 * @example
 * expect(hrHexagon(mm(24)).nutHeight).toBe(21.5);
 */
export const hrHexagon = (diameter: Millimetre): StructuralHexagon | undefined => HR_TABLE.get(diameter);

/**
 * Head and nut of system HV, M12 to M36. Source: EN 14399-4:2015.
 *
 * @example
 * expect(hvHexagon(mm(24)).nutHeight).toBe(20);
 */
export const hvHexagon = (diameter: Millimetre): StructuralHexagon | undefined => HV_TABLE.get(diameter);

/** Width across flats of large HV sets, M39 to M72, mm. Source: DASt-Ri 021, from memory: confirm before buying a socket. */
export const hvLargeAcrossFlats = (diameter: Millimetre): Millimetre | undefined => {
  const width = HV_LARGE.get(diameter);
  return width === undefined ? undefined : mm(width);
};
