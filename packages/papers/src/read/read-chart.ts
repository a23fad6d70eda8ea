import { type Notice, notice, type Scale, type Setting } from '@clampwright/core';
import { recogniseColumns } from './columns.ts';
import type { ColumnMeaning } from './joint-columns.ts';
import { isFormula, isUnit, readQuantity, unitsOf } from './quantity.ts';
import { RowReader } from './row-reader.ts';
import { placeOf, readTable, type Table } from './table.ts';

export interface ChartTable {
  readonly scales: readonly Scale[];
  readonly settings: readonly Setting[];
  readonly notices: readonly Notice[];
}

const CHART_COLUMNS = {
  gear: { says: 'gear', headings: ['gear', 'gang', 'getriebegang'] },
  step: { says: 'step', headings: ['step', 'power step', 'stufe', 'leistungsstufe', 'setting', 'einstellung'] },
  pumpPressure: { says: 'pump pressure', headings: ['pump pressure', 'pressure', 'pumpendruck', 'druck'] },
  airPressure: { says: 'air pressure', headings: ['air pressure', 'luftdruck'] },
  scale: { says: 'scale', headings: ['scale', 'wrench scale', 'skala', 'skalenwert'] },
  torque: { says: 'torque', headings: ['torque', 'mean torque', 'drehmoment', 'mittelwert'], dimension: 'torque' },
  deviation: { says: 'standard deviation', headings: ['standard deviation', 'deviation', 's', 'standardabweichung'], dimension: 'share' },
  shots: { says: 'shots', headings: ['shots', 'n', 'readings', 'messungen', 'anzahl'], dimension: 'number' },
  use: { says: 'use', headings: ['use', 'only for', 'verwendung'] },
} as const satisfies Readonly<Record<string, ColumnMeaning>>;

type ChartColumn = keyof typeof CHART_COLUMNS;
const LABELS = ['gear', 'step', 'pumpPressure', 'airPressure', 'scale'] as const satisfies readonly ChartColumn[];
const USES = { tightening: ['tighten', 'anziehen'], loosening: ['loosen', 'loosening only', 'lösen', 'nur lösen'] } as const;

/** A chart in long form (one setting a row) or wide form (gears down, steps across, the unit in the first heading). */
export function readChart(bytes: Uint8Array, file: string): ChartTable {
  const table = readTable(bytes, file);
  if (!table.ok) return { scales: [], settings: [], notices: table.notices };
  const steps = table.value.headings.slice(1);
  return steps.length > 0 && steps.every((heading) => /^(step|stufe)?\s*\d+([.,]\d+)?$/i.test(heading.trim()))
    ? wide(table.value)
    : long(table.value);
}

function long(table: Table): ChartTable {
  const columns = recogniseColumns<ChartColumn>(table, CHART_COLUMNS, ['torque']);
  const notices: Notice[] = [...table.notices, ...columns.notices];
  // two columns of one meaning: neither is taken for the right one
  if (columns.notices.some(({ code }) => code === 'column-twice')) return { scales: [], settings: [], notices };
  const labels = LABELS.filter((label) => columns.at.has(label));
  const torqueColumn = columns.at.get('torque');
  if (labels.length === 0 && torqueColumn)
    notices.push(notice('column-missing', { wanted: 'gear and step, pump pressure, air pressure or scale' }, { file: table.file, row: 1 }));
  if (labels.length === 0 || !torqueColumn) return { scales: [], settings: [], notices };
  const settings: Setting[] = [];
  for (const row of table.rows) {
    const reader = new RowReader<ChartColumn>(table, columns, CHART_COLUMNS, 'metric', row);
    const texts = labels.map((label) => reader.required(label));
    const cell = row.cells[torqueColumn.index] ?? '';
    // a chart says its own unit: no default stands in for it
    const torque = reader.take(readQuantity(cell, 'torque', torqueColumn.unit, reader.at('torque', cell), table.decimals));
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
    const name = CHART_COLUMNS[label].says;
    return unit === undefined ? { name } : { name, unit };
  });
  return { scales, settings, notices };
}

function wide(table: Table): ChartTable {
  const [corner, ...steps] = table.headings;
  const unit = /[[(]([^\])]*)[\])]/.exec(corner!)?.[1]?.trim();
  const notices: Notice[] = [...table.notices];
  if (unit === undefined || !isUnit('torque', unit)) {
    notices.push(notice('unit-missing', { wanted: unitsOf('torque') }, { file: table.file, row: 1, column: corner! }));
    return { scales: [], settings: [], notices };
  }
  const settings: Setting[] = [];
  for (const { row, cells } of table.rows) {
    const gear = cells[0]!.replace(/^(gear|gang)\s*/i, '');
    const place = placeOf(table, row, corner!, cells[0]!);
    if (gear === '' || isFormula(gear)) {
      notices.push(gear === '' ? notice('cell-empty', { wanted: 'gear' }, place) : notice('cell-formula', {}, place));
      continue;
    }
    for (const [at, step] of steps.entries()) {
      const cell = (cells[at + 1] ?? '').trim();
      if (cell === '' || cell === '-' || cell === '–') continue;
      const torque = readQuantity(cell, 'torque', unit, placeOf(table, row, step, cell), table.decimals);
      if (torque.ok) settings.push({ labels: [gear, step.replace(/^\D+/, '').trim()], torque: torque.value, row });
      else notices.push(...torque.notices);
    }
  }
  return { scales: [{ name: 'gear' }, { name: 'step' }], settings, notices };
}
