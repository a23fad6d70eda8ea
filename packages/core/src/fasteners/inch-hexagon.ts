import type { Millimetre } from '../quantity.ts';
import { F436_THICKNESS, f436Washer } from './f436-washer.ts';
import { cornersOf, type Hexagon } from './hexagon.ts';
import { HEX_HEADS, hexHeadSource, STRUCTURAL_HEADS } from './inch-head-dimensions.ts';
import { structuralInchHole } from './inch-hole.ts';
import { HEAVY_HEX_NUTS, HEX_NUTS, heavyHexNutSource } from './inch-nut-dimensions.ts';
import type { Thread } from './thread.ts';

const of = <T extends { readonly diameter: Millimetre }>(rows: readonly T[], { diameter }: Pick<Thread, 'diameter'>): T | undefined =>
  rows.find((one) => Math.abs(one.diameter - diameter) < 1e-6);

/** The bearing face of an inch nut or head is taken as wide as its flats. ASME PCC-1:2013 Appendix J, D_e = (flats + hole)/2. */
const asWideAsFlats = (acrossFlats: Millimetre) => ({ acrossFlats, acrossCorners: cornersOf(acrossFlats), bearingFace: acrossFlats });

function around(thread: Thread) {
  const washer = f436Washer(thread.diameter);
  return {
    ...(washer ? { washerOuter: washer.outer, washerThickness: washer.thicknessMax < 5 ? F436_THICKNESS : washer.thicknessMin } : {}),
    ...(washer ? { hole: structuralInchHole(thread.diameter, 'standard').width } : {}),
  };
}

/**
 * Head, nut, washer and hole of an inch thread.
 *
 * - `heavy-hex`: heavy hex nut F = 1.5 D + 1/8 in from 1/2 in (but 9/16), and the structural head of the same width to 1 1/2 in
 * - `hex`: hex cap screw and hex nut, F = 1.5 D with exceptions; the nut is one step wider than the head at 7/16 and 9/16
 *
 * Source: ASME B18.2.1, B18.2.2, B18.2.6; washer ASTM F436; hole RCSC 2014 (from memory).
 *
 * @example
 * expect(inInch(inchHexagon(findInchThread('3/4'), 'heavy-hex').acrossFlats)).toBeCloseTo(1.25, 9);
 * expect(inInch(inchHexagon(findInchThread('7/16'), 'hex').nutAcrossFlats)).toBeCloseTo(11 / 16, 9);
 */
export function inchHexagon(thread: Thread, product: 'heavy-hex' | 'hex'): Hexagon | undefined {
  if (product === 'heavy-hex') {
    const nut = of(HEAVY_HEX_NUTS, thread);
    if (!nut) return undefined;
    const head = of(STRUCTURAL_HEADS, thread);
    return {
      product,
      ...asWideAsFlats(nut.acrossFlats),
      ...(head ? { headHeight: head.height } : {}),
      nutHeight: nut.thicknessMax,
      ...around(thread),
      source: heavyHexNutSource,
    };
  }
  const head = of(HEX_HEADS, thread);
  if (!head) return undefined;
  const nut = of(HEX_NUTS, thread);
  return {
    product,
    ...asWideAsFlats(head.acrossFlats),
    headHeight: head.height,
    ...(nut && nut.acrossFlats !== head.acrossFlats ? { nutAcrossFlats: nut.acrossFlats } : {}),
    ...(nut ? { nutHeight: nut.thicknessMax } : {}),
    ...around(thread),
    source: hexHeadSource,
  };
}

/** What can be measured with a wrench or a rule, by the item's name in the standards. */
export type InchItem = 'heavy hex nut' | 'hex nut' | 'hex bolt' | 'heavy hex structural bolt';

/**
 * Basic width across flats F and height H of one item; the height of a nut is its thickness.
 *
 * @example
 * const nut = inchItem(inch(1), 'heavy hex nut');
 * expect(inInch(nut.height)).toBeCloseTo(63 / 64, 9);
 */
export function inchItem(
  diameter: Millimetre,
  item: InchItem,
): { readonly acrossFlats: Millimetre; readonly height: Millimetre } | undefined {
  const size = { diameter };
  const nut = item === 'heavy hex nut' ? of(HEAVY_HEX_NUTS, size) : item === 'hex nut' ? of(HEX_NUTS, size) : undefined;
  if (nut) return { acrossFlats: nut.acrossFlats, height: nut.thickness };
  const head = item === 'hex bolt' ? of(HEX_HEADS, size) : item === 'heavy hex structural bolt' ? of(STRUCTURAL_HEADS, size) : undefined;
  return head && { acrossFlats: head.acrossFlats, height: head.height };
}
