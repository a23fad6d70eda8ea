import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';

export type WasherStandard = 'ISO 7089' | 'EN 14399-6';

/** A plain washer, mm. */
export interface Washer {
  /** minimum */
  readonly inner: Millimetre;
  /** maximum */
  readonly outer: Millimetre;
  /** nominal */
  readonly thickness: Millimetre;
  readonly source: Source;
}

type Row = readonly [d: number, inner: number, outer: number, thickness: number];

/** ISO 7090 (chamfered) has the same nominal sizes from M5. */
const ISO_7089: readonly Row[] = [
  [3, 3.2, 7, 0.5],
  [3.5, 3.7, 8, 0.5],
  [4, 4.3, 9, 0.8],
  [5, 5.3, 10, 1],
  [6, 6.4, 12, 1.6],
  [8, 8.4, 16, 1.6],
  [10, 10.5, 20, 2],
  [12, 13, 24, 2.5],
  [14, 15, 28, 2.5],
  [16, 17, 30, 3],
  [18, 19, 34, 3],
  [20, 21, 37, 3],
  [22, 23, 39, 3],
  [24, 25, 44, 4],
  [27, 28, 50, 4],
  [30, 31, 56, 4],
  [33, 34, 60, 5],
  [36, 37, 66, 5],
  [39, 42, 72, 6],
  [42, 45, 78, 8],
  [45, 48, 85, 8],
  [48, 52, 92, 8],
  [52, 56, 98, 8],
  [56, 62, 105, 10],
  [60, 66, 110, 10],
  [64, 70, 115, 10],
];

/** Chamfered, hardened; the chamfer faces head or nut. */
const EN_14399_6: readonly Row[] = [
  [12, 13, 24, 3],
  [14, 15, 28, 3],
  [16, 17, 30, 4],
  [18, 19, 34, 4],
  [20, 21, 37, 4],
  [22, 23, 39, 4],
  [24, 25, 44, 4],
  [27, 28, 50, 5],
  [30, 31, 56, 5],
  [36, 37, 66, 6],
];

const TABLES: Readonly<Record<WasherStandard, { readonly rows: readonly Row[]; readonly source: Source }>> = {
  'ISO 7089': { rows: ISO_7089, source: { standard: 'ISO 7089', edition: '2000', clause: 'Tables 1, 2', provenance: 'published' } },
  'EN 14399-6': { rows: EN_14399_6, source: { standard: 'EN 14399-6', edition: '2015', clause: 'Table 1', provenance: 'published' } },
};

/**
 * The washer of a standard for a nominal diameter.
 * Source: ISO 7089:2000 (second-choice sizes from memory); EN 14399-6:2015.
 *
 * @example
 * expect(washer('EN 14399-6', mm(24)).value.thickness).toBe(4);
 * expect(washer('EN 14399-6', mm(10)).ok).toBe(false);
 */
export function washer(standard: WasherStandard, diameter: Millimetre): Outcome<Washer> {
  const { rows, source } = TABLES[standard];
  const row = rows.find(([d]) => d === diameter);
  if (!row) return refused(notice('washer-unknown', { standard, size: `M${diameter}` }));
  return done({ inner: mm(row[1]), outer: mm(row[2]), thickness: mm(row[3]), source });
}
