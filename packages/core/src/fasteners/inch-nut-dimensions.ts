import { inch, type Millimetre } from '../quantity.ts';
import type { Source } from '../source.ts';
import { inchSize } from './inch-size.ts';

/** A hexagon nut: width across flats, and thickness basic and maximum. */
export interface InchNut {
  readonly diameter: Millimetre;
  readonly acrossFlats: Millimetre;
  readonly thickness: Millimetre;
  readonly thicknessMax: Millimetre;
}

export const heavyHexNutSource: Source = { standard: 'ASME B18.2.2', edition: '2015', clause: 'heavy hex nuts', provenance: 'published' };
export const hexNutSource: Source = { standard: 'ASME B18.2.2', edition: '2015', clause: 'hex nuts', provenance: 'memory' };

/** Size, F basic, H basic, H maximum (decimal, as printed), in. */
type Row = readonly [size: string, acrossFlats: string, thickness: string, thicknessMax: number];

// biome-ignore format: a table is read by its columns
const HEAVY_HEX: readonly Row[] = [
  ['1/4',   '1/2',     '15/64',   0.250],
  ['5/16',  '9/16',    '19/64',   0.314],
  ['3/8',   '11/16',   '23/64',   0.377],
  ['7/16',  '3/4',     '27/64',   0.441],
  ['1/2',   '7/8',     '31/64',   0.504],
  ['9/16',  '15/16',   '35/64',   0.568],
  ['5/8',   '1 1/16',  '39/64',   0.631],
  ['3/4',   '1 1/4',   '47/64',   0.758],
  ['7/8',   '1 7/16',  '55/64',   0.885],
  ['1',     '1 5/8',   '63/64',   1.012],
  ['1 1/8', '1 13/16', '1 7/64',  1.139],
  ['1 1/4', '2',       '1 7/32',  1.251],
  ['1 3/8', '2 3/16',  '1 11/32', 1.378],
  ['1 1/2', '2 3/8',   '1 15/32', 1.505],
  ['1 5/8', '2 9/16',  '1 19/32', 1.632],
  ['1 3/4', '2 3/4',   '1 23/32', 1.759],
  ['1 7/8', '2 15/16', '1 27/32', 1.886],
  ['2',     '3 1/8',   '1 31/32', 2.013],
  ['2 1/4', '3 1/2',   '2 13/64', 2.251],
  ['2 1/2', '3 7/8',   '2 29/64', 2.505],
  ['2 3/4', '4 1/4',   '2 45/64', 2.759],
  ['3',     '4 5/8',   '2 61/64', 3.013],
  ['3 1/4', '5',       '3 3/16',  3.252],
  ['3 1/2', '5 3/8',   '3 7/16',  3.506],
  ['3 3/4', '5 3/4',   '3 11/16', 3.760],
  ['4',     '6 1/8',   '3 15/16', 4.014],
];

// biome-ignore format: a table is read by its columns
const HEX: readonly Row[] = [
  ['1/4',   '7/16',    '7/32',    0.226],
  ['5/16',  '1/2',     '17/64',   0.273],
  ['3/8',   '9/16',    '21/64',   0.337],
  ['7/16',  '11/16',   '3/8',     0.385],
  ['1/2',   '3/4',     '7/16',    0.448],
  ['9/16',  '7/8',     '31/64',   0.496],
  ['5/8',   '15/16',   '35/64',   0.559],
  ['3/4',   '1 1/8',   '41/64',   0.665],
  ['7/8',   '1 5/16',  '3/4',     0.776],
  ['1',     '1 1/2',   '55/64',   0.887],
  ['1 1/8', '1 11/16', '31/32',   0.999],
  ['1 1/4', '1 7/8',   '1 1/16',  1.094],
  ['1 3/8', '2 1/16',  '1 11/64', 1.206],
  ['1 1/2', '2 1/4',   '1 9/32',  1.317],
];

const nut = ([size, acrossFlats, thickness, thicknessMax]: Row): InchNut => ({
  diameter: inch(inchSize(size)!),
  acrossFlats: inch(inchSize(acrossFlats)!),
  thickness: inch(inchSize(thickness)!),
  thicknessMax: inch(thicknessMax),
});

export const HEAVY_HEX_NUTS: readonly InchNut[] = HEAVY_HEX.map(nut);
export const HEX_NUTS: readonly InchNut[] = HEX.map(nut);
