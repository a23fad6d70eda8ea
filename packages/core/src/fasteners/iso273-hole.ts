import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, mm } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';

export type HoleFit = 'fine' | 'medium' | 'coarse';

const source: Source = { standard: 'ISO 273', edition: '1979', clause: 'Table', provenance: 'memory' };

const ROWS: readonly (readonly [d: number, fine: number, medium: number, coarse: number])[] = [
  [1.6, 1.7, 1.8, 2],
  [2, 2.2, 2.4, 2.6],
  [2.5, 2.7, 2.9, 3.1],
  [3, 3.2, 3.4, 3.6],
  [3.5, 3.7, 3.9, 4.2],
  [4, 4.3, 4.5, 4.8],
  [5, 5.3, 5.5, 5.8],
  [6, 6.4, 6.6, 7],
  [7, 7.4, 7.6, 8],
  [8, 8.4, 9, 10],
  [10, 10.5, 11, 12],
  [12, 13, 13.5, 14.5],
  [14, 15, 15.5, 16.5],
  [16, 17, 17.5, 18.5],
  [18, 19, 20, 21],
  [20, 21, 22, 24],
  [22, 23, 24, 26],
  [24, 25, 26, 28],
  [27, 28, 30, 32],
  [30, 31, 33, 35],
  [33, 34, 36, 38],
  [36, 37, 39, 42],
  [39, 40, 42, 45],
  [42, 43, 45, 48],
  [45, 46, 48, 52],
  [48, 50, 52, 56],
  [52, 54, 56, 62],
  [56, 58, 62, 66],
  [60, 62, 66, 70],
  [64, 66, 70, 74],
  [68, 70, 74, 78],
  [72, 74, 78, 82],
  [76, 78, 82, 86],
  [80, 82, 86, 91],
  [85, 87, 91, 96],
  [90, 93, 96, 101],
  [95, 98, 101, 107],
  [100, 104, 107, 112],
];

const COLUMN: Readonly<Record<HoleFit, 1 | 2 | 3>> = { fine: 1, medium: 2, coarse: 3 };

/**
 * Clearance hole of ISO 273, mm.
 * Source: ISO 273:1979, from memory; the common sizes agree with published tables.
 *
 * @example
 * expect(iso273Hole(mm(16)).value.value).toBe(17.5);
 * expect(iso273Hole(mm(24), 'coarse').value.value).toBe(28);
 */
export function iso273Hole(diameter: Millimetre, fit: HoleFit = 'medium'): Outcome<Cited<Millimetre>> {
  const row = ROWS.find(([d]) => d === diameter);
  if (!row) return refused(notice('hole-unknown', { standard: 'ISO 273', size: `M${diameter}` }));
  return done({ value: mm(row[COLUMN[fit]]), source });
}
