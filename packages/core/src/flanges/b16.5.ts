import type { Outcome } from '../outcome.ts';
import { inch } from '../quantity.ts';
import type { Source } from '../source.ts';
import { type AsmeFlange, flangeBolt, flangeIn, raisedFaceHeight } from './asme-flange.ts';
import { B165_ROWS, RAISED_FACE } from './b16.5-table.ts';

/** Thickness without raised face of Class 150 and 300, and ring numbers beyond R41: from memory, consistent with the metric page. */
const source: Source = {
  standard: 'ASME B16.5',
  edition: '2009',
  clause: 'dimension tables by class; ring numbers Table 5',
  provenance: 'published',
};

/**
 * Flanges of ASME B16.5, NPS 1/2 to 24, Class 150 to 2500 (2500 ends at NPS 12; no NPS 3 1/2 in 900 and above).
 *
 * Source: ASME B16.5-2009, metric page and older inch tables as read in public texts; their misprints put right (Class 300 NPS 2: OD 6.5 in, 8 bolts;
 * NPS 2 1/2: bolt circle 5.88 in; Class 400 NPS 16: bolt circle 22.5 in; Class 1500 NPS 24: bolt 3 1/2 in).
 */
export const B165_FLANGES: readonly AsmeFlange[] = Object.entries(B165_ROWS).flatMap(([rating, rows]) =>
  rows.map(([nps, outsideDiameter, thickness, bolts, bolt, boltCircle, studLength, ring]) => ({
    standard: 'ASME B16.5' as const,
    nps,
    flangeClass: Number(rating),
    outsideDiameter: inch(outsideDiameter),
    boltCircle: inch(boltCircle),
    bolts,
    ...flangeBolt(bolt),
    thickness: inch(thickness),
    raisedFace: inch(RAISED_FACE[nps]!),
    raisedFaceHeight: raisedFaceHeight(Number(rating)),
    studLength: inch(studLength),
    ...(ring === null ? {} : { ring }),
    source,
  })),
);

/**
 * The B16.5 flange of a nominal pipe size and class.
 *
 * @example
 * const flange = b165Flange('8', 300).value;
 * expect([flange.bolts, flange.bolt, inInch(flange.boltCircle)]).toEqual([12, '7/8-9 UNC', 13]);
 * expect(b165Flange('3-1/2', 1500).notices[0].code).toBe('flange-unknown');
 */
export const b165Flange = (nps: string, flangeClass: number): Outcome<AsmeFlange> => flangeIn(B165_FLANGES, 'ASME B16.5', nps, flangeClass);
