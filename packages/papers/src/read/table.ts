import { type Notice, notice, type Outcome, refused } from '@clampwright/core';
import { type HeadingRow, headingFit, meansOf } from './columns.ts';
import { csvSources } from './csv-source.ts';
import type { HeadingMemory } from './heading-memory.ts';
import { isUnitRow, pairedHeadings } from './heading-storeys.ts';
import { sheetOf } from './open-file.ts';
import { placeOfRow, type Table, type TableHead } from './place.ts';
import type { Row } from './row.ts';
import type { TableSource } from './table-source.ts';
import { type FieldOf, TABLES, type TableName } from './tables/index.ts';
import { workbookKind } from './workbook/workbook.ts';
import { workbookSources } from './workbook-source.ts';

/** What is looked for in a file. */
export interface Wanted<T extends TableName> {
  readonly table: T;
  readonly required: readonly FieldOf<T>[];
  readonly memory: HeadingMemory;
  /** how much another row is like the head of the table: `gear, step 1, step 2 …`; 0 not at all */
  readonly alsoHeads?: (cells: readonly string[]) => number;
}

interface Found {
  readonly source: TableSource;
  readonly row: Row | undefined;
  readonly found: number;
  readonly complete: boolean;
}

/** A table whose headings are found; its rows are handed out as they are read. */
export interface OpenTable {
  readonly head: TableHead;
  /** Every row below the headings; faults of the table come in the end. What is refused then counts for nothing. */
  readonly each: (visit: (row: Row) => void) => Outcome<Pick<Table, 'lost' | 'notices'>>;
}

/**
 * Opens a table in CSV or XLSX bytes; the file's name may go on with `#` and a sheet. The headings are looked for below title rows, and
 * on each visible sheet; two sheets that would both do are asked. Ragged and broken rows of a CSV file are reported one by one, the good ones kept.
 */
export function openTable<T extends TableName>(bytes: Uint8Array, path: string, wanted: Wanted<T>): Outcome<OpenTable> {
  const found = findHead(bytes, path, wanted);
  return found.ok ? tableOf(found.value.best, found.value.said) : found;
}

/** The whole of a table, for lists that are short. */
export function readTable<T extends TableName>(bytes: Uint8Array, path: string, wanted: Wanted<T>): Outcome<Table> {
  const open = openTable(bytes, path, wanted);
  if (!open.ok) return open;
  const rows: Row[] = [];
  const rest = open.value.each((row) => rows.push(row));
  return rest.ok ? { ok: true, value: { ...open.value.head, rows, ...rest.value } } : rest;
}

/** Only the headings of a table, and where they stand. */
export function readHead<T extends TableName>(bytes: Uint8Array, path: string, wanted: Wanted<T>): HeadingRow | undefined {
  const found = findHead(bytes, path, wanted);
  if (!found.ok || !found.value.best.row) return undefined;
  const { source, row } = found.value.best;
  return { file: source.file, headingRow: row.row, headings: row.cells, ...(source.sheet === undefined ? {} : { sheet: source.sheet }) };
}

function findHead<T extends TableName>(
  bytes: Uint8Array,
  path: string,
  wanted: Wanted<T>,
): Outcome<{ readonly best: Found; readonly said: readonly Notice[] }> {
  const { file, sheet } = sheetOf(path);
  const opened = sourcesOf(bytes, file, sheet);
  if (!opened.ok) return opened;
  const { sources, notices: said } = opened.value;
  const looked: Found[] = [];
  for (const source of sources) {
    const head = source.head();
    if (!head.ok) return head;
    looked.push(bestRow(source, head.value, wanted));
  }
  const complete = looked.filter((one) => one.complete && one.source.sheet !== undefined);
  if (complete.length > 1) {
    const sheets = complete.map(({ source }) => source.sheet!);
    return refused(
      ...said,
      notice('sheet-unclear', { wanted: TABLES[wanted.table].says, sheets: sheets.join(', '), example: `${file}#${sheets[0]}` }, { file }),
    );
  }
  const best = looked.reduce<Found | undefined>((top, one) => (top && top.found >= one.found ? top : one), undefined);
  return best ? { ok: true, value: { best, said } } : refused(...said, notice('file-empty', { file }, { file }));
}

function sourcesOf(
  bytes: Uint8Array,
  file: string,
  sheet: string | undefined,
): Outcome<{ readonly sources: readonly TableSource[]; readonly notices: readonly Notice[] }> {
  const kind = workbookKind(bytes);
  if (kind === undefined) return csvSources(bytes, file);
  if (kind === 'old') return refused(notice('workbook-old', {}, { file }));
  const sources = workbookSources(bytes, file, sheet);
  return sources.ok ? { ok: true, value: { sources: sources.value, notices: [] } } : sources;
}

const isFull = ({ cells }: Row) => cells.some((cell) => cell !== '');

function bestRow<T extends TableName>(source: TableSource, rows: readonly Row[], { table, required, memory, alsoHeads }: Wanted<T>): Found {
  const full = rows.filter(isFull);
  const fitOf = (cells: readonly string[]) => {
    const also = alsoHeads?.(cells) ?? 0;
    return also > 0 ? { found: also, complete: true } : headingFit(table, required, cells, memory);
  };
  const knows = (heading: string) => meansOf(table, heading).length > 0 || (alsoHeads?.(['x', heading]) ?? 0) > 0;
  let best: Found = { source, row: full[0], found: 0, complete: false };
  for (let at = 0; at < full.length; at += 1) {
    const [row, below] = [full[at]!, full[at + 1]];
    const fit = fitOf(row.cells);
    if (fit.found > best.found) best = { source, row, ...fit };
    // headings in two rows, one above the other: taken where they say more than one row alone …
    const cells = below?.row === row.row + 1 ? pairedHeadings(row.cells, below.cells, knows) : undefined;
    if (!cells) continue;
    const both = fitOf(cells);
    // … where the lower says the units, or where the upper heads columns of which the lower alone would say too little
    const needed = best.row === row && fit.found > 0 && (isUnitRow(below!.cells) || (both.complete && both.found > fit.found));
    if (both.found > best.found || needed) best = { source, row: { ...below!, cells }, ...both };
    if (needed) at += 1;
  }
  return best;
}

function tableOf({ source, row: head, found }: Found, said: readonly Notice[]): Outcome<OpenTable> {
  const { file, sheet } = source;
  if (!head) {
    const all = source.all(() => undefined);
    const empty = notice('file-empty', { file }, { file, ...(sheet === undefined ? {} : { sheet }) });
    return refused(...said, ...(all.ok ? all.value.notices : all.notices), ...(all.ok ? [empty] : []));
  }
  const width = head.cells.length;
  return {
    ok: true,
    value: {
      head: {
        file,
        headingRow: head.row,
        decimals: source.decimals,
        headings: head.cells,
        ...(sheet === undefined ? {} : { sheet }),
      },
      each(visit) {
        const uneven: Row[] = [];
        const all = source.all((one) => {
          if (one.row <= head.row || !isFull(one)) return;
          const surplus = one.cells.slice(width).some((cell) => cell !== '');
          if (!source.ragged && (surplus || one.cells.length < width)) uneven.push(one);
          else visit(one);
        });
        if (!all.ok) return refused(...said, ...all.notices);
        const notices = all.value.notices.filter(({ place }) => found === 0 || (place?.row ?? head.row) >= head.row);
        const lost = all.value.lost.filter(({ row }) => found === 0 || row > head.row);
        // a line that cannot be taken apart may have been the headings
        if (lost.some(({ row }) => row < head.row)) return refused(...said, ...notices);
        const ofUneven = uneven.map(({ cells, row }) =>
          notice('row-broken', { cells: cells.length, wanted: width }, placeOfRow(source, row)),
        );
        return { ok: true, value: { lost: [...lost, ...uneven], notices: [...said, ...notices, ...ofUneven] } };
      },
    },
  };
}
