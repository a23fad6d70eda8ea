import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Millimetre, mm } from '../quantity.ts';
import type { Source } from '../source.ts';
import { PN_FLANGE_HOLES, PN_FLANGE_TABLES } from './en1092-1-table.ts';

/** Bolting and main dimensions of a PN flange, mm. */
export interface PnFlange {
  readonly dn: number;
  readonly pn: number;
  readonly outsideDiameter: Millimetre;
  readonly boltCircle: Millimetre;
  readonly bolts: number;
  /** designation of the bolt's thread: `M16` */
  readonly bolt: string;
  readonly hole: Millimetre;
  /** flange thickness of type 11 (weld neck) */
  readonly thickness: Millimetre;
  readonly source: Source;
}

/**
 * Bolt hole of a PN flange by bolt diameter, mm; `undefined` where EN 1092-1 uses no such bolt.
 *
 * @example
 * expect(pnFlangeHole(mm(20))).toBe(22);
 */
export const pnFlangeHole = (boltDiameter: Millimetre): Millimetre | undefined => {
  const hole = PN_FLANGE_HOLES.get(boltDiameter);
  return hole === undefined ? undefined : mm(hole);
};

/** Nominal pressures and sizes that {@link en1092Flange} knows. */
export const PN_FLANGES: readonly { readonly pn: number; readonly dn: number }[] = [...PN_FLANGE_TABLES].flatMap(([pn, { rows }]) =>
  rows.map(([dn]) => ({ pn, dn })),
);

/**
 * Steel flange of EN 1092-1, type 11: bolting, bolt circle, hole, thickness.
 *
 * Known: PN 2.5 and 6 (as PN 6), 10, 16, 25 to DN 1000; PN 40 to DN 600; PN 63 to DN 400; PN 100 to DN 350.
 * Source: EN 1092-1:2018. PN 16 seen in public data, the others from memory: confirm in the standard before a release relies on it.
 *
 * @example
 * const flange = en1092Flange(80, 16).value;
 * expect(`${flange.bolts}x${flange.bolt}`).toBe('8xM16');
 * expect(flange.boltCircle).toBe(160);
 */
export function en1092Flange(dn: number, pn: number): Outcome<PnFlange> {
  const table = PN_FLANGE_TABLES.get(pn);
  const row = table?.rows.find(([size]) => size === dn);
  if (!table || !row) return refused(notice('flange-unknown', { standard: 'EN 1092-1', size: `DN ${dn}`, rating: `PN ${pn}` }));
  const [, outside, circle, bolts, thread, thickness] = row;
  return done({
    dn,
    pn,
    outsideDiameter: mm(outside),
    boltCircle: mm(circle),
    bolts,
    bolt: `M${thread}`,
    hole: mm(PN_FLANGE_HOLES.get(thread)!),
    thickness: mm(thickness),
    source: table.source,
  });
}
