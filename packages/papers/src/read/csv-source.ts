import { type Notice, notice, type Outcome, refused } from '@clampwright/core';
import { csvRows } from './csv-rows.ts';
import { decode } from './decode.ts';
import { placeOfCell } from './place.ts';
import type { Row } from './row.ts';
import { HEAD_ROWS, type TableSource } from './table-source.ts';

/** Rows beyond this are refused before parsing. */
const LARGEST_ROWS = 250_000;
const SEPARATORS = [';', '\t', ','] as const;

/** A CSV file as a table source: one for each separator that may part its cells, the likeliest first. */
export function csvSources(
  bytes: Uint8Array,
  file: string,
): Outcome<{ readonly sources: readonly TableSource[]; readonly notices: readonly Notice[] }> {
  const decoded = decode(bytes, file);
  if (!decoded.ok) return decoded;
  const text = decoded.value.text.replace(/\r\n?/g, '\n');
  if (countLines(text) > LARGEST_ROWS) return refused(notice('file-too-large', { file, limit: `${LARGEST_ROWS} rows` }, { file }));
  const sources = separators(text).map(
    (separator): TableSource => ({
      file,
      hidden: false,
      decimals: separator === ';' ? 'comma' : 'point',
      ragged: false,
      head: () => {
        const rows: Row[] = [];
        return { ok: true, value: csvRows(firstLines(text), separator, (row) => rows.push(row)) ? rows : [] };
      },
      all: (visit) => all(text, separator, file, visit),
    }),
  );
  return { ok: true, value: { sources, notices: decoded.value.notices } };
}

function all(text: string, separator: string, file: string, visit: (row: Row) => void): ReturnType<TableSource['all']> {
  const broken = csvRows(text, separator, visit);
  if (!broken) return refused(notice('csv-broken', { problem: 'too many rows have open quotation marks' }, { file }));
  return {
    ok: true,
    value: {
      lost: broken.map(({ row, line }) => ({ row, cells: line.split(separator) })),
      notices: broken.map(({ row, problem, line }) => notice('csv-broken', { problem }, placeOfCell({ file }, row, '', line))),
    },
  };
}

function countLines(text: string): number {
  let lines = 1;
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) lines += 1;
  return lines;
}

const firstLines = (text: string): string => text.split('\n', 4 * HEAD_ROWS).join('\n');

/** Separators by how often they occur in the first row, outside quotation marks. */
function separators(text: string): string[] {
  const line = /^\s*(.*)/.exec(text.slice(0, 100_000))?.[1] ?? '';
  const bare = line.replace(/"[^"]*"/g, '');
  const count = (separator: string) => bare.split(separator).length - 1;
  return SEPARATORS.toSorted((a, b) => count(b) - count(a));
}
