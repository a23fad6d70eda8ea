import { type Notice, notice, type Outcome, type Place, refused } from '@clampwright/core';
import { type CsvRow, csvRows } from './csv-rows.ts';
import { decode } from './decode.ts';
import type { Decimals } from './read-number.ts';

/** Rows beyond this are refused before parsing. */
const LARGEST_ROWS = 250_000;

/** A table as it stood in the file: headings, and cells with the row number a spreadsheet shows. */
export interface Table {
  readonly file: string;
  /** how decimals are written in a file with this separator */
  readonly decimals: Decimals;
  readonly headings: readonly string[];
  readonly rows: readonly CsvRow[];
  /** rows that could not be taken, as far as their cells can be told apart */
  readonly lost: readonly CsvRow[];
  readonly notices: readonly Notice[];
}

/** Reads a CSV file: separator by the heading row, ragged and broken rows reported one by one, the good ones kept. */
export function readTable(bytes: Uint8Array, file: string): Outcome<Table> {
  const decoded = decode(bytes, file);
  if (!decoded.ok) return decoded;
  const text = decoded.value.text.replace(/\r\n?/g, '\n');
  const notices: Notice[] = [...decoded.value.notices];
  if (countLines(text) > LARGEST_ROWS) return refused(notice('file-too-large', { file, limit: `${LARGEST_ROWS} rows` }, { file }));
  const delimiter = delimiterOf(text);
  const parsed = csvRows(text, delimiter);
  if (!parsed) return refused(...notices, notice('csv-broken', { problem: 'too many rows have open quotation marks' }, { file }));
  const [head, ...body] = parsed.rows.filter(({ cells }) => cells.some((cell) => cell !== ''));
  const lost: CsvRow[] = [];
  for (const { row, problem, line } of parsed.broken) {
    notices.push(notice('csv-broken', { problem }, placeOf({ file }, row, '', line)));
    lost.push({ row, cells: line.split(delimiter) });
  }
  if (!head) return refused(...notices, notice('file-empty', { file }, { file }));
  if (lost.some(({ row }) => row < head.row)) return refused(...notices);
  const rows: CsvRow[] = [];
  for (const one of body) {
    const { row, cells } = one;
    const surplus = cells.slice(head.cells.length).some((cell) => cell !== '');
    if (surplus || cells.length < head.cells.length) {
      notices.push(notice('row-broken', { cells: cells.length, wanted: head.cells.length }, { file, row }));
      lost.push(one);
    } else rows.push(one);
  }
  return { ok: true, value: { file, decimals: delimiter === ';' ? 'comma' : 'point', headings: head.cells, rows, lost, notices } };
}

function countLines(text: string): number {
  let lines = 1;
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) lines += 1;
  return lines;
}

/** The separator that occurs most in the heading row, outside quotation marks. */
function delimiterOf(text: string): string {
  const line = /^\s*(.*)/.exec(text)?.[1] ?? '';
  const bare = line.replace(/"[^"]*"/g, '');
  const count = (character: string) => bare.split(character).length - 1;
  return [';', '\t', ','].reduce((best, one) => (count(one) > count(best) ? one : best));
}

/** A cell's place as the reader of the file sees it, with what stood there. */
export const placeOf = ({ file }: Pick<Table, 'file'>, row: number, column: string, read: string): Place => ({
  file,
  row,
  ...(column === '' ? {} : { column }),
  read: read.length > 60 ? `${read.slice(0, 60)}…` : read,
});
