import { type Notice, notice, type Scale, type Setting } from '@clampwright/core';
import { turned } from './across.ts';
import { meansOf, recogniseColumns } from './columns.ts';
import type { HeadingMemory } from './heading-memory.ts';
import { decimalsIn, placeOfCell, placeOfRow, type Table } from './place.ts';
import { isFormula, isUnit, readQuantity, unitsOf } from './quantity.ts';
import { RowReader } from './row-reader.ts';
import { readTable } from './table.ts';
import { CHART_FIELDS, type ChartColumn } from './tables/chart.ts';

export interface ChartTable {
  readonly scales: readonly Scale[];
  readonly settings: readonly Setting[];
  readonly notices: readonly Notice[];
}

const LABELS = ['gear', 'step', 'pumpPressure', 'airPressure', 'scale'] as const satisfies readonly ChartColumn[];
const USES = { tightening: ['tighten', 'anziehen'], loosening: ['loosen', 'loosening only', 'lösen', 'nur lösen'] } as const;

/**
 * A chart in long form (one setting a row), the same laid across (one setting a column: pressures above, torques below), or wide form:
 * gears down and steps across, or the other way, with the unit in the first heading.
 */
export function readChart(bytes: Uint8Array, file: string, memory: HeadingMemory): ChartTable {
  const table = readTable(bytes, file, { table: 'chart', required: ['torque'], memory, alsoHeads: likeWide });
  if (!table.ok) return { scales: [], settings: [], notices: table.notices };
  if (!isWide(table.value.headings)) return long(table.value, memory);
  if (!isAcross(table.value.headings)) return wide(table.value);
  const { table: down, placed } = turned(table.value);
  const read = long(down, memory);
  return { ...read, settings: read.settings.map((one) => ({ ...one, row: table.value.headingRow })), notices: read.notices.map(placed) };
}

/** One scale across, and below it what each of its settings gives: the corner names a scale that has no other to go with it. */
const isAcross = ([corner]: readonly string[]): boolean => meansOf('chart', corner!).some((field) => ALONE.has(field));
const ALONE: ReadonlySet<ChartColumn> = new Set(['pumpPressure', 'airPressure', 'scale']);

/** A row of a long chart may look wide as well: without a unit in its corner it counts little. */
const likeWide = (cells: readonly string[]): number => (isWide(cells) ? (UNIT.test(cells[0]!) ? cells.length : 1.5) : 0);
const UNIT = /[[(]([^\])]*)[\])]/;

const STEP = /^(?:step|stufe)?\s*\d+(?:[.,]\d+)?$/i;
const GEAR = /^(?:gear|gang|getriebegang)\s*\d+$/i;
/** Words before a gear or a step, where the cell has them. */
const NAME = /^(?:gear|gang|getriebegang|step|stufe|leistungsstufe)\s*/i;

/** Steps or gears across: every heading but the first is one, and all of one kind. A bare number is a step, unless the corner says that steps go down. */
function isWide(headings: readonly string[]): boolean {
  const last = headings.findLastIndex((heading) => heading.trim() !== '');
  const steps = headings.slice(1, last + 1);
  return (
    /[a-z]/i.test(headings[0] ?? '') &&
    steps.length > 0 &&
    (steps.every((heading) => STEP.test(heading.trim())) || steps.every((heading) => GEAR.test(heading.trim())))
  );
}

function long(table: Table, memory: HeadingMemory): ChartTable {
  const columns = recogniseColumns(table, 'chart', ['torque'], memory);
  const notices: Notice[] = [...table.notices, ...columns.notices];
  // two columns of one meaning: neither is taken for the right one
  if (columns.notices.some(({ code }) => code === 'column-twice' || code === 'column-unclear'))
    return { scales: [], settings: [], notices };
  const labels = LABELS.filter((label) => columns.at.has(label));
  const torqueColumn = columns.at.get('torque');
  if (labels.length === 0 && torqueColumn)
    notices.push(
      notice('column-missing', { wanted: 'gear and step, pump pressure, air pressure or scale' }, placeOfRow(table, table.headingRow)),
    );
  if (labels.length === 0 || !torqueColumn) return { scales: [], settings: [], notices };
  const settings: Setting[] = [];
  for (const row of table.rows) {
    const reader = new RowReader<ChartColumn>(table, columns, CHART_FIELDS, 'metric', row);
    const texts = labels.map((label) => reader.required(label));
    const cell = row.cells[torqueColumn.index] ?? '';
    // a chart says its own unit: no default stands in for it
    const torque = reader.take(
      readQuantity(cell, 'torque', torqueColumn.unit, reader.at('torque', cell), decimalsIn(table, row, torqueColumn.index)),
    );
    // an unread "use" may have meant loosening only: such a row is not offered
    const use = reader.word('use', USES);
    const unusable = reader.notices.length > 0;
    const deviation = reader.quantity('deviation', 'share');
    const shots = reader.quantity('shots', 'number');
    notices.push(...reader.notices);
    if (torque === undefined || unusable) continue;
    settings.push({
      labels: texts as string[],
      torque,
      row: row.row,
      ...(deviation === undefined ? {} : { deviation }),
      ...(shots === undefined ? {} : { shots }),
      ...(use === 'loosening' ? { looseningOnly: true } : {}),
    });
  }
  const scales = labels.map((label): Scale => {
    const unit = columns.at.get(label)?.unit;
    const name = CHART_FIELDS[label].says;
    return unit === undefined ? { name } : { name, unit };
  });
  return { scales, settings, notices };
}

function wide(table: Table): ChartTable {
  const [corner, ...steps] = table.headings;
  const unit = UNIT.exec(corner!)?.[1]?.trim();
  const notices: Notice[] = [...table.notices];
  if (unit === undefined || !isUnit('torque', unit)) {
    notices.push(notice('unit-missing', { wanted: unitsOf('torque') }, placeOfCell(table, table.headingRow, corner!, corner!, 0)));
    return { scales: [], settings: [], notices };
  }
  // gears across where the headings say so, or where the corner says that what goes down are steps
  const gearsAcross =
    GEAR.test(steps.find((heading) => heading.trim() !== '')!.trim()) || /^(?:step|stufe|leistungsstufe)\b/i.test(corner!.trim());
  const settings: Setting[] = [];
  for (const one of table.rows) {
    const { row, cells } = one;
    const down = (cells[0] ?? '').replace(NAME, '');
    const place = placeOfCell(table, row, corner!, cells[0] ?? '', 0);
    if (down === '' || isFormula(down)) {
      notices.push(
        down === '' ? notice('cell-empty', { wanted: gearsAcross ? 'step' : 'gear' }, place) : notice('cell-formula', {}, place),
      );
      continue;
    }
    for (const [at, step] of steps.entries()) {
      if (step.trim() === '') continue;
      const cell = (cells[at + 1] ?? '').trim();
      if (cell === '' || cell === '-' || cell === '–') continue;
      const torque = readQuantity(cell, 'torque', unit, placeOfCell(table, row, step, cell, at + 1), decimalsIn(table, one, at + 1));
      const across = step.replace(/^\D+/, '').trim();
      if (torque.ok) settings.push({ labels: gearsAcross ? [across, down] : [down, across], torque: torque.value, row });
      else notices.push(...torque.notices);
    }
  }
  return { scales: [{ name: 'gear' }, { name: 'step' }], settings, notices };
}
