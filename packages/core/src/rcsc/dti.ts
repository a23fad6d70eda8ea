import { inchSize } from '../fasteners/inch-size.ts';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { inch, inInch, kip, type Millimetre, type Newton } from '../quantity.ts';
import type { Source } from '../source.ts';

export const f959Source: Source = { standard: 'ASTM F959', edition: '2009', clause: 'Table 3', provenance: 'published' };

/** 325 for 120 ksi bolts, 490 for 150 ksi bolts. */
export type DtiType = '325' | '490';

/** Gap at which the compression load is read, and the feeler that the installed indicator must refuse. */
export const DTI_TEST_GAP = inch(0.015);
export const DTI_FEELER = inch(0.005);

/** Compression load at the test gap, least and greatest, kip, and number of spaces between the bumps; by type. */
// biome-ignore format: a table is read by its columns
const ROWS: readonly (readonly [size: string, low325: number, high325: number, spaces325: number, low490: number, high490: number, spaces490: number])[] = [
  ['1/2',   12,  14,  4, 15,  18,  5],
  ['5/8',   19,  23,  4, 24,  29,  5],
  ['3/4',   28,  34,  5, 35,  42,  6],
  ['7/8',   39,  47,  5, 49,  59,  6],
  ['1',     51,  61,  6, 64,  77,  7],
  ['1 1/8', 56,  67,  6, 80,  96,  7],
  ['1 1/4', 71,  85,  7, 102, 122, 8],
  ['1 3/8', 85,  102, 7, 121, 145, 8],
  ['1 1/2', 103, 124, 8, 148, 178, 9],
];

/** One size and type of direct tension indicator. */
export interface Dti {
  readonly low: Newton;
  readonly high: Newton;
  /** spaces between the protrusions (from memory) */
  readonly spaces: number;
}

/**
 * Direct tension indicator of a size: band of the compression load at 0.015 in gap, and number of spaces.
 *
 * Valid for: F959-09. Other editions print other bands for type 325 above 1 in, and are not given here. Source: ASTM F959-09 Table 3.
 *
 * @example
 * const found = directTensionIndicator('325', inch(7 / 8)).value;
 * expect([inKip(found.low), inKip(found.high)].map(Math.round)).toEqual([39, 47]);
 */
export function directTensionIndicator(type: DtiType, diameter: Millimetre): Outcome<Dti> {
  const row = ROWS.find(([size]) => Math.abs(inch(inchSize(size)!) - diameter) < 1e-6);
  if (!row) return refused(notice('size-not-in-table', { size: `${inInch(diameter)} in`, table: 'ASTM F959-09 Table 3' }));
  const [, low325, high325, spaces325, low490, high490, spaces490] = row;
  return done(
    type === '325'
      ? { low: kip(low325), high: kip(high325), spaces: spaces325 }
      : { low: kip(low490), high: kip(high490), spaces: spaces490 },
  );
}

/**
 * Spaces that may refuse the feeler at the verification tension 1.05·T_m: fewer than half. Source: RCSC 2014 7.1 and 8.2.4, F959 practice (from memory).
 *
 * @example
 * expect([4, 5, 7].map(mostRefusalsAtVerification)).toEqual([1, 2, 3]);
 */
export const mostRefusalsAtVerification = (spaces: number): number => Math.ceil(spaces / 2) - 1;

/**
 * Spaces that must refuse the feeler once installed: half or more, odd numbers rounded up. Source: as above (from memory).
 *
 * @example
 * expect([5, 6, 9].map(leastRefusalsInstalled)).toEqual([3, 3, 5]);
 */
export const leastRefusalsInstalled = (spaces: number): number => Math.ceil(spaces / 2);
