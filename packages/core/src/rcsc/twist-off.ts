import { inchSize } from '../fasteners/inch-size.ts';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { inch, inInch, lbf, type Millimetre, type Newton } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';

export type TwistOffGrade = 'F1852' | 'F2280';

const published: Source = {
  standard: 'ASTM F3125/F3125M',
  edition: '2015',
  clause: 'twist-off assembly, installation tension test',
  provenance: 'published',
};
/** 1.05·0.70·S_ut·A_t to 50 lbf, where no printed figure was seen */
const computed: Source = { ...published, provenance: 'computed' };

/** Size, minimum installation tension of F1852 and F2280, lbf. */
// biome-ignore format: a table is read by its columns
const ROWS: readonly (readonly [size: string, f1852: number, f2280: number, source: Source])[] = [
  ['1/2',   12550, 15650,  published],
  ['5/8',   19950, 24900,  computed],
  ['3/4',   29450, 36800,  published],
  ['7/8',   40750, 50950,  published],
  ['1',     53450, 66800,  computed],
  ['1 1/8', 67350, 84100,  published],
  ['1 1/4', 85500, 106850, published],
];

/**
 * Least tension that a twist-off assembly must show when its spline shears: about 1.05·0.70·S_ut·A_t, as printed to 50 lbf.
 *
 * A sheared spline proves nothing unless the joint was snug-tight before. Source: ASTM F3125-15; 5/8 and 1 in computed.
 *
 * @example
 * expect(inLbf(leastTwistOffTension('F1852', inch(3 / 4)).value.value)).toBeCloseTo(29450, 6);
 */
export function leastTwistOffTension(grade: TwistOffGrade, diameter: Millimetre): Outcome<Cited<Newton>> {
  const row = ROWS.find(([size]) => Math.abs(inch(inchSize(size)!) - diameter) < 1e-6);
  if (!row) return refused(notice('size-not-in-table', { size: `${inInch(diameter)} in`, table: published.standard }));
  const [, f1852, f2280, source] = row;
  return done({ value: lbf(grade === 'F1852' ? f1852 : f2280), source });
}
