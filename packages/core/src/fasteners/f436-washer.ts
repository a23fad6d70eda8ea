import { inch, type Millimetre } from '../quantity.ts';
import type { Source } from '../source.ts';
import { inchSize } from './inch-size.ts';

/** A hardened circular flat washer for structural bolts. */
export interface InchWasher {
  readonly diameter: Millimetre;
  readonly inner: Millimetre;
  readonly outer: Millimetre;
  readonly thicknessMin: Millimetre;
  readonly thicknessMax: Millimetre;
}

export const f436Source: Source = { standard: 'ASTM F436', edition: '2011', clause: 'Table 1, circular washers', provenance: 'memory' };

/** Bolt size, inside and outside diameter, thickness least and greatest, in. */
type Row = readonly [size: string, inner: string, outer: string, thicknessMin: number, thicknessMax: number];

// biome-ignore format: a table is read by its columns
const ROWS: readonly Row[] = [
  ['1/4',   '9/32',   '5/8',     0.051, 0.08],
  ['5/16',  '11/32',  '11/16',   0.051, 0.08],
  ['3/8',   '13/32',  '13/16',   0.051, 0.08],
  ['7/16',  '15/32',  '59/64',   0.051, 0.08],
  ['1/2',   '17/32',  '1 1/16',  0.097, 0.177],
  ['5/8',   '11/16',  '1 5/16',  0.122, 0.177],
  ['3/4',   '13/16',  '1 15/32', 0.122, 0.177],
  ['7/8',   '15/16',  '1 3/4',   0.136, 0.177],
  ['1',     '1 1/8',  '2',       0.136, 0.177],
  ['1 1/8', '1 1/4',  '2 1/4',   0.136, 0.177],
  ['1 1/4', '1 3/8',  '2 1/2',   0.136, 0.177],
  ['1 3/8', '1 1/2',  '2 3/4',   0.136, 0.177],
  ['1 1/2', '1 5/8',  '3',       0.136, 0.177],
  ['1 3/4', '1 7/8',  '3 3/8',   0.178, 0.28],
  ['2',     '2 1/8',  '3 3/4',   0.178, 0.28],
  ['2 1/4', '2 3/8',  '4',       0.24,  0.34],
  ['2 1/2', '2 5/8',  '4 1/2',   0.24,  0.34],
  ['2 3/4', '2 7/8',  '5',       0.24,  0.34],
  ['3',     '3 1/8',  '5 1/2',   0.24,  0.34],
  ['3 1/4', '3 3/8',  '6',       0.24,  0.34],
  ['3 1/2', '3 5/8',  '6 1/2',   0.24,  0.34],
  ['3 3/4', '3 7/8',  '7',       0.24,  0.34],
  ['4',     '4 1/8',  '7 1/2',   0.24,  0.34],
];

export const F436_WASHERS: readonly InchWasher[] = ROWS.map(([size, inner, outer, thicknessMin, thicknessMax]) => ({
  diameter: inch(inchSize(size)!),
  inner: inch(inchSize(inner)!),
  outer: inch(inchSize(outer)!),
  thicknessMin: inch(thicknessMin),
  thicknessMax: inch(thicknessMax),
}));

/** Thickness that bolt lengths count with, whatever the size up to 1 1/2 in: 5/32 in (RCSC, bolt length). */
export const F436_THICKNESS = inch(5 / 32);

export const f436Washer = (diameter: Millimetre): InchWasher | undefined =>
  F436_WASHERS.find((one) => Math.abs(one.diameter - diameter) < 1e-6);
