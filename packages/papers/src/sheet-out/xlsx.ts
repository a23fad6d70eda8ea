import { type CellValue, type ColumnDef, type WriteSheet, writeXlsx } from 'hucre/xlsx';
import type { SheetTable, SheetValue } from './sheet-table.ts';

/** Excel allows no more in the name of a sheet, and none of these signs. */
const MOST_NAME = 31;
const sheetName = (name: string) => name.replace(/[[\]*?/\\:]/g, ' ').slice(0, MOST_NAME);

const FORMAT = { date: 'yyyy-mm-dd', instant: 'yyyy-mm-dd hh:mm:ss' } as const;
const numberFormat = (digits: number) => (digits === 0 ? '0' : `0.${'0'.repeat(digits)}`);
const WIDTH = { text: 22, number: 12, date: 12, instant: 20 } as const;

/**
 * A workbook, a sheet for each table: numbers as numbers, days and instants (UTC) as dates, headings frozen, a filter over them.
 * The one place that knows the library that writes it.
 */
export function tablesXlsx(tables: readonly SheetTable[], made: Date): Promise<Uint8Array> {
  return writeXlsx({ sheets: tables.map(sheetOf), properties: { creator: 'clampwright', created: made, modified: made } });
}

function sheetOf({ name, columns, rows }: SheetTable): WriteSheet {
  const kinds = columns.map(({ kind }) => kind);
  const last = letterOf(columns.length);
  return {
    name: sheetName(name),
    columns: columns.map(
      ({ head, kind, digits }): ColumnDef => ({
        width: Math.max(WIDTH[kind], Math.min(44, head.length + 3)),
        ...(kind === 'number' && digits !== undefined ? { numFmt: numberFormat(digits) } : {}),
        ...(kind === 'date' || kind === 'instant' ? { numFmt: FORMAT[kind] } : {}),
      }),
    ),
    rows: [columns.map(({ head }) => head), ...rows.map((row) => row.map((value, at) => cellOf(value, kinds[at]!)))],
    cells: new Map(columns.map(({ head }, at) => [`0,${at}`, { value: head, style: { font: { bold: true } } }])),
    freezePane: { rows: 1 },
    autoFilter: { range: `A1:${last}${rows.length + 1}` },
  };
}

function cellOf(value: SheetValue, kind: SheetTable['columns'][number]['kind']): CellValue {
  if (value === undefined) return null;
  if ((kind === 'date' || kind === 'instant') && typeof value === 'string')
    return new Date(kind === 'date' ? `${value}T00:00:00.000Z` : value);
  return value;
}

const letterOf = (count: number): string =>
  (count > 26 ? String.fromCharCode(64 + Math.floor((count - 1) / 26)) : '') + String.fromCharCode(65 + ((count - 1) % 26));
