import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { type Megapascal, type Millimetre, MPa, mm2, type Newton, type SquareMillimetre } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';
import { LIMIT_PRESSURES_1986, LIMIT_PRESSURES_2003, type LimitPressureEntry } from './limit-pressure-table.ts';

export type LimitPressureEdition = '1986' | '2003';

/**
 * Bearing area under a head or nut: A_p = π/4·(d_w² − d_ha²), mm².
 *
 * - d_w outer diameter of the face; d_ha largest of hole, its chamfer, and the recess of the face, mm
 *
 * Source: VDI 2230-1:2015 section 5.5.4.
 *
 * @example
 * expect(bearingArea(mm(14.63), mm(11))).toBeCloseTo(73.07, 2);
 */
export const bearingArea = (outer: Millimetre, inner: Millimetre): SquareMillimetre => mm2((Math.PI / 4) * (outer ** 2 - inner ** 2));

/**
 * Pressure under a head or nut: p = F/A_p, MPa. Compare with {@link limitPressure}. Source: VDI 2230-1:2015 section 5.5.4.
 *
 * @example
 * expect(bearingPressure(kN(43.5), mm(14.63), mm(11))).toBeCloseTo(595.3, 1);
 */
export const bearingPressure = (force: Newton, outer: Millimetre, inner: Millimetre): Megapascal => MPa(force / bearingArea(outer, inner));

const SOURCES: Readonly<Record<LimitPressureEdition, Source>> = {
  '1986': { standard: 'VDI 2230-1', edition: '1986', clause: 'limit surface pressures', provenance: 'published' },
  '2003': { standard: 'VDI 2230-1', edition: '2003', clause: 'Table A9', provenance: 'published' },
};
/** The materials of each edition's list. */
export const LIMIT_PRESSURES: Readonly<Record<LimitPressureEdition, readonly LimitPressureEntry[]>> = {
  '1986': LIMIT_PRESSURES_1986,
  '2003': LIMIT_PRESSURES_2003,
};

const plain = (text: string) =>
  text
    .toLowerCase()
    .replace(/^en[\s-]+/, '')
    .replace(/[^a-z0-9]/g, '');

/**
 * Pressure p_G a clamped material bears under a head or nut without creeping, MPa.
 *
 * - material as the list names it: `S355`, `C45`, `EN-GJL-250`, `EN AW-6082 (Rm 290)`
 *
 * The editions differ: mild steel 260 MPa (1986) against 490 MPa (2003); cast irons of the 2003 list are uncertain.
 * Source: VDI 2230-1:2003 Table A9; VDI 2230:1986.
 *
 * @example
 * expect(limitPressure('S355', '2003').value.value).toBe(760);
 * expect(limitPressure('St37', '1986').value.value).toBe(260);
 */
export function limitPressure(material: string, edition: LimitPressureEdition = '2003'): Outcome<Cited<Megapascal>> {
  const entry = LIMIT_PRESSURES[edition].find(({ names }) => names.some((name) => plain(name) === plain(material)));
  return entry ? done({ value: MPa(entry.limit), source: SOURCES[edition] }) : refused(notice('clamped-material-unknown', { material }));
}
