import type { Row } from '../row.ts';
import { numberText } from './cell-text.ts';
import { broken, tooLarge } from './misfit.ts';
import { LONGEST_CELL, unescaped } from './shared-strings.ts';
import type { Shown } from './styles.ts';
import { ENOUGH, readXml } from './xml.ts';
import type { ZipPart } from './zip.ts';

const MOST_ROWS = 250_000;
const MOST_COLUMNS = 1024;
const MOST_CELLS = 8_000_000;
const MOST_MERGED = 1_000_000;

/** What the cells of a sheet refer to. */
export interface Around {
  readonly strings: readonly string[];
  readonly shown: readonly Shown[];
  readonly dateSystem: 1900 | 1904;
}

/** A cell that begins with this is no place of a person's decimals: see `Row.exact`. */
const LIKE_THOUSANDS = /^-?\d{1,3}\.\d{3}(\D|$)/;

interface Merge {
  readonly row: number;
  readonly column: number;
  readonly toRow: number;
}

export interface SheetRows {
  readonly rows: readonly Row[];
  readonly hidden: number;
}

/** Rows of a sheet as they are read, the first `most` of them. A cell merged downwards stands in each of its rows. Source: ISO/IEC 29500-1, 18.3.1. */
export function sheetRows(part: ZipPart, { strings, shown, dateSystem }: Around, most = Number.POSITIVE_INFINITY): SheetRows {
  const rows: Row[] = [];
  const merges: Merge[] = [];
  let hidden = 0;
  let cellsRead = 0;
  let row = { number: 0, cells: [] as string[], exact: [] as number[], hidden: false };
  let cell = { column: -1, type: 'n', style: -1, value: '', formula: '', hasFormula: false };
  let into: 'value' | 'formula' | 'inline' | undefined;
  let spoken = 0;

  const finishCell = () => {
    const { column, type, style, value, formula, hasFormula } = cell;
    if (value === '' && !hasFormula) return;
    const text = textOf();
    if (text === '') return;
    cellsRead += 1;
    if (cellsRead > MOST_CELLS) throw tooLarge(`${MOST_CELLS} cells`);
    while (row.cells.length < column) row.cells.push('');
    row.cells[column] = text;

    function textOf(): string {
      // a formula that was never worked out has no value to take
      if (value === '' && hasFormula) return `=${formula}`;
      if (type === 's') {
        const string = strings[Number(value)];
        if (string === undefined) throw broken('a cell names a text that is not there');
        return string.trim();
      }
      if (type === 'b') return value === '1' ? 'true' : 'false';
      if (type === 'n') {
        const number = numberText(value, shown[style], dateSystem);
        if (number.exact && LIKE_THOUSANDS.test(number.text)) row.exact.push(column);
        return number.text;
      }
      return (type === 'str' || type === 'inlineStr' ? unescaped(value) : value).trim();
    }
  };

  readXml(part, {
    open: (name, attributes) => {
      switch (name) {
        case 'row':
          row = { number: rowNumber(attributes.r, row.number + 1), cells: [], exact: [], hidden: attributes.hidden === '1' };
          cell = { ...cell, column: -1 };
          break;
        case 'c':
          cell = {
            column: columnIn(attributes.r, cell.column + 1),
            type: attributes.t ?? 'n',
            style: Number(attributes.s ?? -1),
            value: '',
            formula: '',
            hasFormula: false,
          };
          break;
        case 'v':
          into = 'value';
          break;
        case 'f':
          into = 'formula';
          cell.hasFormula = true;
          break;
        case 'rPh':
          spoken += 1;
          break;
        case 't':
          if (spoken === 0) into = 'inline';
          break;
        case 'mergeCell':
          mergeOf(attributes.ref ?? '', merges);
          break;
      }
    },
    text: (more) => {
      if (into === undefined) return;
      if (into === 'formula') cell.formula = (cell.formula + more).slice(0, 60);
      else if (cell.value.length <= LONGEST_CELL) cell.value += more;
    },
    close: (name) => {
      if (name === 'v' || name === 'f' || name === 't') into = undefined;
      else if (name === 'rPh') spoken -= 1;
      else if (name === 'c') finishCell();
      else if (name === 'row') {
        if (row.hidden) hidden += 1;
        if (row.cells.length === 0) return;
        if (rows.length >= MOST_ROWS) throw tooLarge(`${MOST_ROWS} rows`);
        rows.push({ row: row.number, cells: row.cells, ...(row.exact.length > 0 ? { exact: row.exact } : {}) });
        if (rows.length >= most) throw ENOUGH;
      }
    },
  });
  return { rows: filledDown(rows, merges), hidden };
}

function rowNumber(given: string | undefined, next: number): number {
  const number = given === undefined ? next : Number(given);
  if (!Number.isInteger(number) || number < next || number > 1_048_576) throw broken('its rows are not in order');
  return number;
}

function columnIn(reference: string | undefined, next: number): number {
  const column = reference === undefined ? next : columnOf(reference);
  if (column === undefined || column < next) throw broken('the cells of a row are not in order');
  if (column >= MOST_COLUMNS) throw tooLarge(`${MOST_COLUMNS} columns`);
  return column;
}

/** Column of a reference, from 0: `C14` is 2. */
function columnOf(reference: string): number | undefined {
  const letters = /^([A-Z]{1,3})\d+$/.exec(reference)?.[1];
  return letters === undefined ? undefined : [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function mergeOf(reference: string, merges: Merge[]): void {
  const [from = '', to = ''] = reference.split(':');
  const [column, last] = [columnOf(from), columnOf(to)];
  const [row, toRow] = [Number(/\d+$/.exec(from)?.[0]), Number(/\d+$/.exec(to)?.[0])];
  if (column !== undefined && column === last && toRow > row) merges.push({ row, column, toRow });
}

/** One tag merged over the rows of its subgroups is the tag of each. Only columns merged downwards, none across. */
function filledDown(rows: Row[], merges: readonly Merge[]): readonly Row[] {
  if (merges.length === 0) return rows;
  if (merges.reduce((sum, { row, toRow }) => sum + toRow - row, 0) > MOST_MERGED) throw tooLarge(`${MOST_MERGED} merged cells`);
  const byNumber = new Map(rows.map((one) => [one.row, one]));
  for (const { row, column, toRow } of merges) {
    const text = byNumber.get(row)?.cells[column];
    if (text === undefined || text === '') continue;
    for (let at = row + 1; at <= toRow; at += 1) {
      const cells = byNumber.get(at)?.cells;
      if (!cells || (cells[column] ?? '') !== '') continue;
      while (cells.length < column) cells.push('');
      cells[column] = text;
    }
  }
  return rows;
}
