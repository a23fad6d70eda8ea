import type { Notice, Place } from '@clampwright/core';
import type { Decimals } from './read-number.ts';
import { columnLetter, type Row } from './row.ts';

/** Where a table stands and what its headings are. CSV and XLSX give the same. */
export interface TableHead {
  readonly file: string;
  /** of a workbook */
  readonly sheet?: string;
  /** row of the headings */
  readonly headingRow: number;
  /** how decimals are written in text cells here */
  readonly decimals: Decimals;
  readonly headings: readonly string[];
}

/** All of a table. */
export interface Table extends TableHead {
  readonly rows: readonly Row[];
  /** rows that could not be taken, as far as their cells can be told apart */
  readonly lost: readonly Row[];
  readonly notices: readonly Notice[];
}

type Growing = { -readonly [K in keyof Place]: Place[K] };

/** A row's place as the reader of the file sees it. Made for every row of a long list: no copies. */
export function placeOfRow({ file, sheet }: Pick<Table, 'file' | 'sheet'>, row: number): Place {
  return sheet === undefined ? { file, row } : { file, sheet, row };
}

/** A cell's place, with what stood there. `index`: its column, from 0, where it has one. */
export function placeOfCell(table: Pick<Table, 'file' | 'sheet'>, row: number, column: string, read: string, index?: number): Place {
  const place: Growing = placeOfRow(table, row);
  if (column !== '') place.column = column;
  if (index !== undefined) place.letter = columnLetter(index);
  place.read = read.length > 60 ? `${read.slice(0, 60)}…` : read;
  return place;
}

/** How decimals are written in one cell: a true number has its point, whatever the file's people use. */
export const decimalsIn = (table: TableHead, row: Row, index: number | undefined): Decimals =>
  index !== undefined && row.exact?.includes(index) ? 'point' : table.decimals;
