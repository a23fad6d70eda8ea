import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { Millimetre } from '../quantity.ts';
import type { Source } from '../source.ts';
import { steelworkHole } from './en1090-2-hole.ts';
import { hrHexagon, hrSource, hvHexagon, hvLargeAcrossFlats, hvLargeSource, hvSource } from './en14399-hexagon.ts';
import { inchHexagon } from './inch-hexagon.ts';
import { isoHexagon, isoHexagonSource } from './iso-hexagon.ts';
import { iso273Hole } from './iso273-hole.ts';
import { isMetric, type Thread } from './thread.ts';
import { type WasherStandard, washer } from './washer.ts';

/**
 * Families of bolt-and-nut products, by the standard that gives their widths:
 * ISO 4014/4017/4032, EN 14399-3 (HR), EN 14399-4 (HV), ASME B18.2.6/B18.2.2 heavy hex, ASME B18.2.1/B18.2.2 hex.
 */
export type HexagonProduct = 'ISO' | 'HR' | 'HV' | 'heavy-hex' | 'hex';

/** What is around a thread: head, nut, washer, hole. A field is missing where the family's standards give no value for the size. */
export interface Hexagon {
  readonly product: HexagonProduct;
  /** width across flats, nominal (the socket that fits) */
  readonly acrossFlats: Millimetre;
  /** width across flats of the nut where it is another than the head's */
  readonly nutAcrossFlats?: Millimetre;
  /** width across corners of the nominal hexagon, s·2/√3: room the socket needs to turn in starts here */
  readonly acrossCorners: Millimetre;
  /** nominal */
  readonly headHeight?: Millimetre;
  /** maximum */
  readonly nutHeight?: Millimetre;
  /** diameter of the face that bears, minimum */
  readonly bearingFace?: Millimetre;
  readonly washerOuter?: Millimetre;
  readonly washerThickness?: Millimetre;
  /** clearance hole, usual fit: ISO 273 medium, EN 1090-2 normal round, RCSC standard */
  readonly hole?: Millimetre;
  readonly source: Source;
}

/** Corners of a regular hexagon: e = s·2/√3, mm. */
export const cornersOf = (acrossFlats: Millimetre): Millimetre => ((acrossFlats * 2) / Math.sqrt(3)) as Millimetre;

/**
 * Head, nut, washer and hole of a product family for a thread.
 *
 * @example
 * const hv = hexagonFor(findThread('M24').value, 'HV').value;
 * expect(hv.acrossFlats).toBe(41);
 * expect(hv.hole).toBe(26);
 */
export function hexagonFor(thread: Thread, product: HexagonProduct): Outcome<Hexagon> {
  const inch = product === 'heavy-hex' || product === 'hex';
  if (inch === isMetric(thread)) return refused(notice('hexagon-unknown', { product, size: thread.designation }));
  const hexagon = inch ? inchHexagon(thread, product) : metricHexagon(thread.diameter, product);
  return hexagon ? done(hexagon) : refused(notice('hexagon-unknown', { product, size: thread.designation }));
}

function metricHexagon(diameter: Millimetre, product: 'ISO' | 'HR' | 'HV'): Hexagon | undefined {
  if (product !== 'ISO') return structuralHexagon(diameter, product);
  const iso = isoHexagon(diameter);
  if (!iso) return undefined;
  const hole = iso273Hole(diameter);
  return {
    product,
    acrossFlats: iso.acrossFlats,
    acrossCorners: cornersOf(iso.acrossFlats),
    headHeight: iso.headHeight,
    nutHeight: iso.nutHeight,
    bearingFace: iso.bearingFaceA ?? iso.bearingFaceB,
    ...washerPart('ISO 7089', diameter),
    ...(hole.ok ? { hole: hole.value.value } : {}),
    source: isoHexagonSource,
  };
}

function structuralHexagon(diameter: Millimetre, product: 'HR' | 'HV'): Hexagon | undefined {
  const structural = product === 'HR' ? hrHexagon(diameter) : hvHexagon(diameter);
  const large = product === 'HV' ? hvLargeAcrossFlats(diameter) : undefined;
  const acrossFlats = structural?.acrossFlats ?? large;
  if (acrossFlats === undefined) return undefined;
  const hole = steelworkHole(diameter);
  return {
    product,
    acrossFlats,
    acrossCorners: cornersOf(acrossFlats),
    ...(structural ? { headHeight: structural.headHeight, nutHeight: structural.nutHeight, bearingFace: structural.bearingFace } : {}),
    ...washerPart('EN 14399-6', diameter),
    ...(hole.ok ? { hole: hole.value.width } : {}),
    source: structural ? (product === 'HR' ? hrSource : hvSource) : hvLargeSource,
  };
}

function washerPart(standard: WasherStandard, diameter: Millimetre) {
  const found = washer(standard, diameter);
  return found.ok ? { washerOuter: found.value.outer, washerThickness: found.value.thickness } : {};
}
