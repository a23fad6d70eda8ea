import { inch, type Millimetre } from '../quantity.ts';
import type { Source } from '../source.ts';
import { inchSize } from './inch-size.ts';

/** A hexagon head: width across flats and height, basic. */
export interface InchHead {
  readonly diameter: Millimetre;
  readonly acrossFlats: Millimetre;
  readonly height: Millimetre;
}

export const structuralHeadSource: Source = {
  standard: 'ASME B18.2.6',
  edition: '2010',
  clause: 'heavy hex structural bolts',
  provenance: 'memory',
};
export const hexHeadSource: Source = {
  standard: 'ASME B18.2.1',
  edition: '2012',
  clause: 'hex cap screws to 3 in, hex bolts above',
  provenance: 'memory',
};

type Row = readonly [size: string, acrossFlats: string, height: string];

/** The flats are those of the heavy hex nut, so one wrench fits both. */
// biome-ignore format: a table is read by its columns
const STRUCTURAL: readonly Row[] = [
  ['1/2',   '7/8',     '5/16'],
  ['5/8',   '1 1/16',  '25/64'],
  ['3/4',   '1 1/4',   '15/32'],
  ['7/8',   '1 7/16',  '35/64'],
  ['1',     '1 5/8',   '39/64'],
  ['1 1/8', '1 13/16', '11/16'],
  ['1 1/4', '2',       '25/32'],
  ['1 3/8', '2 3/16',  '27/32'],
  ['1 1/2', '2 3/8',   '15/16'],
];

// biome-ignore format: a table is read by its columns
const HEX: readonly Row[] = [
  ['1/4',   '7/16',    '5/32'],
  ['5/16',  '1/2',     '13/64'],
  ['3/8',   '9/16',    '15/64'],
  ['7/16',  '5/8',     '9/32'],
  ['1/2',   '3/4',     '5/16'],
  ['9/16',  '13/16',   '23/64'],
  ['5/8',   '15/16',   '25/64'],
  ['3/4',   '1 1/8',   '15/32'],
  ['7/8',   '1 5/16',  '35/64'],
  ['1',     '1 1/2',   '39/64'],
  ['1 1/8', '1 11/16', '11/16'],
  ['1 1/4', '1 7/8',   '25/32'],
  ['1 3/8', '2 1/16',  '27/32'],
  ['1 1/2', '2 1/4',   '15/16'],
  ['1 5/8', '2 7/16',  '1 1/32'],
  ['1 3/4', '2 5/8',   '1 3/32'],
  ['1 7/8', '2 13/16', '1 5/32'],
  ['2',     '3',       '1 7/32'],
  ['2 1/4', '3 3/8',   '1 3/8'],
  ['2 1/2', '3 3/4',   '1 17/32'],
  ['2 3/4', '4 1/8',   '1 11/16'],
  ['3',     '4 1/2',   '1 7/8'],
  ['3 1/4', '4 7/8',   '2 3/16'],
  ['3 1/2', '5 1/4',   '2 5/16'],
  ['3 3/4', '5 5/8',   '2 1/2'],
  ['4',     '6',       '2 11/16'],
];

const head = ([size, acrossFlats, height]: Row): InchHead => ({
  diameter: inch(inchSize(size)!),
  acrossFlats: inch(inchSize(acrossFlats)!),
  height: inch(inchSize(height)!),
});

export const STRUCTURAL_HEADS: readonly InchHead[] = STRUCTURAL.map(head);
export const HEX_HEADS: readonly InchHead[] = HEX.map(head);
