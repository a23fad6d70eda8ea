import { type Layout, type Millimetre, mm, notice } from '@clampwright/core';
import type { StandardFlange } from './flange-text.ts';
import { LARGEST_JOINT } from './positions.ts';
import type { RowReader } from './row-reader.ts';
import { stated } from './stated.ts';
import type { JointColumn } from './tables/joint-list.ts';

/** What a row says about where the bolts are. */
export interface LayoutSays {
  /** `ring`, or rows × columns: `2x4` */
  readonly layout?: string;
  readonly circle?: Millimetre;
  readonly pitchAcross?: Millimetre;
  readonly pitchAlong?: Millimetre;
}

const GRID = /^(\d{1,4})\s*[x×]\s*(\d{1,4})$/i;
const RING = /^(ring|circle|kreis|lochkreis|flange|flansch)$/i;
/** A bolt circle written in whole millimetres or hundredths of an inch still fits the table. */
const CIRCLE_FITS = 1;

/** Reads the columns of the layout. */
export function layoutSays(reader: RowReader<JointColumn>, flange: StandardFlange | undefined, count: number | undefined): LayoutSays {
  const given = reader.quantity('circle', 'length');
  if (flange && given !== undefined && Math.abs(given - flange.circle) > CIRCLE_FITS) {
    const table = `${Math.round(flange.circle * 100) / 100} mm`;
    const read = `${Math.round(given * 100) / 100} mm`;
    reader.fault(
      notice('flange-contradicts', { flange: flange.name, field: 'bolt circle', table, given: read }, reader.at('circle', read)),
    );
  }
  const circle = flange?.circle ?? given;
  return stated({
    layout: layoutWord(reader, count) ?? (circle === undefined ? undefined : 'ring'),
    circle,
    pitchAcross: reader.quantity('pitchAcross', 'length'),
    pitchAlong: reader.quantity('pitchAlong', 'length'),
  });
}

function layoutWord(reader: RowReader<JointColumn>, count: number | undefined): string | undefined {
  const text = reader.text('layout');
  if (text === undefined) return undefined;
  if (RING.test(text)) return 'ring';
  const grid = GRID.exec(text);
  if (!grid) {
    reader.fault(notice('layout-unreadable', {}, reader.at('layout', text)));
    return undefined;
  }
  const bolts = Number(grid[1]) * Number(grid[2]);
  if (bolts < 1 || bolts > LARGEST_JOINT || (count !== undefined && count !== bolts)) {
    reader.fault(notice('layout-contradicts-bolts', { layout: text, bolts: String(count ?? 0) }, reader.at('layout', text)));
  }
  return `${Number(grid[1])}x${Number(grid[2])}`;
}

/** The layout that the rows of a joint say together; `boltCount` for a ring. */
export function layoutFrom(says: LayoutSays, boltCount: number | undefined): Layout | undefined {
  const grid = GRID.exec(says.layout ?? '');
  if (grid) return { kind: 'group', bolts: gridOf(Number(grid[1]), Number(grid[2]), says.pitchAcross, says.pitchAlong) };
  if (says.layout === undefined || boltCount === undefined) return undefined;
  return { kind: 'ring', boltCount, ...(says.circle === undefined ? {} : { circle: says.circle }) };
}
/** Rows across, columns along; where the list gives no spacing it is drawn at three times a usual diameter. */
function gridOf(rows: number, columns: number, across: Millimetre = mm(75), along: Millimetre = across) {
  return Array.from({ length: rows * columns }, (_, i) => ({ x: mm((i % columns) * along), y: mm(Math.floor(i / columns) * across) }));
}
