import { inch, inch2, type Millimetre } from '../quantity.ts';
import type { Source } from '../source.ts';
import { inchSize } from './inch-size.ts';
import type { Thread } from './thread.ts';

const unc: Source = { standard: 'ASME B1.1', edition: '2003', clause: 'UNC, basic dimensions and areas', provenance: 'memory' };
const unf: Source = { standard: 'ASME B1.1', edition: '2003', clause: 'UNF, basic dimensions and areas', provenance: 'published' };
const un8: Source = { standard: 'ASME B1.1', edition: '2003', clause: '8-UN, basic dimensions and areas', provenance: 'memory' };

/** Nominal size, threads per inch, tensile stress area and root area (section at D − 2h_b) as printed, in². */
type Row = readonly [size: string, threadsPerInch: number, stressArea: number, rootArea: number];

// biome-ignore format: a table is read by its columns
const UNC: readonly Row[] = [
  ['1/4',   20,  0.0318, 0.0269],
  ['5/16',  18,  0.0524, 0.0454],
  ['3/8',   16,  0.0775, 0.0678],
  ['7/16',  14,  0.1063, 0.0933],
  ['1/2',   13,  0.1419, 0.1257],
  ['9/16',  12,  0.182,  0.162],
  ['5/8',   11,  0.226,  0.202],
  ['3/4',   10,  0.334,  0.302],
  ['7/8',   9,   0.462,  0.419],
  ['1',     8,   0.606,  0.551],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: an area, not a logarithm
  ['1 1/8', 7,   0.763,  0.693],
  ['1 1/4', 7,   0.969,  0.89],
  ['1 3/8', 6,   1.155,  1.054],
  ['1 1/2', 6,   1.405,  1.294],
  ['1 3/4', 5,   1.9,    1.74],
  ['2',     4.5, 2.5,    2.3],
  ['2 1/4', 4.5, 3.25,   3.02],
  ['2 1/2', 4,   4,      3.72],
  ['2 3/4', 4,   4.93,   4.62],
  ['3',     4,   5.97,   5.62],
  ['3 1/4', 4,   7.1,    6.72],
  ['3 1/2', 4,   8.33,   7.92],
  ['3 3/4', 4,   9.66,   9.21],
  ['4',     4,   11.08,  10.61],
];

// biome-ignore format: a table is read by its columns
const UNF: readonly Row[] = [
  ['1/4',   28, 0.0364, 0.0326],
  ['5/16',  24, 0.058,  0.0524],
  ['3/8',   24, 0.0878, 0.0809],
  ['7/16',  20, 0.1187, 0.109],
  ['1/2',   20, 0.1599, 0.1486],
  ['9/16',  18, 0.203,  0.189],
  ['5/8',   18, 0.256,  0.24],
  ['3/4',   16, 0.373,  0.351],
  ['7/8',   14, 0.509,  0.48],
  ['1',     12, 0.663,  0.625],
  ['1 1/8', 12, 0.856,  0.812],
  ['1 1/4', 12, 1.073,  1.024],
  ['1 3/8', 12, 1.315,  1.26],
  ['1 1/2', 12, 1.581,  1.521],
];

// biome-ignore format: a table is read by its columns
const UN8: readonly Row[] = [
  ['1',     8, 0.606, 0.551],
  ['1 1/8', 8, 0.79,  0.728],
  ['1 1/4', 8, 1,     0.929],
  ['1 3/8', 8, 1.233, 1.155],
  ['1 1/2', 8, 1.492, 1.405],
  ['1 5/8', 8, 1.78,  1.68],
  ['1 3/4', 8, 2.08,  1.98],
  ['1 7/8', 8, 2.41,  2.3],
  ['2',     8, 2.77,  2.65],
  ['2 1/4', 8, 3.56,  3.42],
  ['2 1/2', 8, 4.44,  4.29],
  ['2 3/4', 8, 5.43,  5.26],
  ['3',     8, 6.51,  6.32],
  ['3 1/4', 8, 7.69,  7.49],
  ['3 1/2', 8, 8.96,  8.75],
  ['3 3/4', 8, 10.34, 10.11],
  ['4',     8, 11.81, 11.57],
];

export type InchSeries = 'UNC' | 'UNF' | '8UN';

const thread = ([size, threadsPerInch, stressArea, rootArea]: Row, series: InchSeries, source: Source): Thread => ({
  designation: series === '8UN' ? `${size}-8UN` : `${size}-${threadsPerInch} ${series}`,
  series,
  diameter: inch(inchSize(size)!),
  pitch: inch(1 / threadsPerInch),
  printedStressArea: inch2(stressArea),
  printedRootArea: inch2(rootArea),
  source,
});

/** Unified inch threads 1/4 to 4 in: UNC, UNF and the constant-pitch 8-UN series of flange studs. Source: ASME B1.1:2003. */
export const INCH_THREADS: readonly Thread[] = [
  ...UNC.map((row) => thread(row, 'UNC', unc)),
  ...UNF.map((row) => thread(row, 'UNF', unf)),
  ...UN8.map((row) => thread(row, '8UN', un8)),
];

/** The thread of a size and series, where the standard lists it. */
export const inchThread = (diameter: Millimetre, series: InchSeries): Thread | undefined =>
  INCH_THREADS.find((one) => one.series === series && Math.abs(one.diameter - diameter) < 1e-6);
