import type { Outcome } from '../outcome.ts';
import { inch, type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';
import { type AsmeFlange, flangeBolt, flangeIn, raisedFaceHeight } from './asme-flange.ts';
import { B1647_INCH_ROWS, B1647_METRIC_ROWS, type Row } from './b16.47a-table.ts';

const source: Source = { standard: 'ASME B16.47', edition: '2006', clause: 'Series A, dimension tables by class', provenance: 'published' };

const flanges = (table: Readonly<Record<number, readonly Row[]>>, unit: (value: number) => Millimetre): readonly AsmeFlange[] =>
  Object.entries(table).flatMap(([rating, rows]) =>
    rows.map(([nps, outsideDiameter, thickness, bolts, bolt, boltCircle, studLength, raisedFace]) => ({
      standard: 'ASME B16.47 Series A' as const,
      nps,
      flangeClass: Number(rating),
      outsideDiameter: unit(outsideDiameter),
      boltCircle: unit(boltCircle),
      bolts,
      ...flangeBolt(bolt),
      thickness: unit(thickness),
      raisedFace: unit(raisedFace),
      raisedFaceHeight: raisedFaceHeight(Number(rating)),
      studLength: unit(studLength),
      source,
    })),
  );

/**
 * Large flanges of ASME B16.47 Series A, NPS 26 to 60, Class 150 to 900 (900 ends at NPS 48).
 *
 * Class 400 to 900 as the metric tables print them. Source: tables as read in public texts; their misprints put right: Class 150 NPS 50 outside
 * diameter 61.75 in, NPS 48 raised face 53.5 in (printed 52.5, recalled 53.5, unresolved); Class 300 NPS 60 bolt 2 1/4 in; Class 600 holes follow the bolts;
 * Class 900 NPS 30 thickness 149.4 mm, NPS 46 stud 700 mm.
 */
export const B1647_FLANGES: readonly AsmeFlange[] = [...flanges(B1647_INCH_ROWS, inch), ...flanges(B1647_METRIC_ROWS, mm)];

/**
 * The B16.47 Series A flange of a nominal pipe size and class. Series B has other bolting and is not given.
 *
 * @example
 * const flange = b1647Flange('36', 150).value;
 * expect([flange.bolts, flange.bolt]).toEqual([32, '1 1/2-8UN']);
 */
export const b1647Flange = (nps: string, flangeClass: number): Outcome<AsmeFlange> =>
  flangeIn(B1647_FLANGES, 'ASME B16.47 Series A', nps, flangeClass);
