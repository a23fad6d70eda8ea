import type { Outcome } from '@clampwright/core';
import { csvSources } from './csv-source.ts';
import { load, type OpenFile } from './open-file.ts';
import type { Row } from './row.ts';
import { workbookKind } from './workbook/workbook.ts';
import { workbookSources } from './workbook-source.ts';

/** All rows of a CSV file, or of a sheet, as they stand there: for a copy to write on. */
export function rowsOf(open: OpenFile, file: string, sheet?: string): Outcome<readonly Row[]> {
  const bytes = load(open, file);
  if (!bytes.ok) return bytes;
  const sources = workbookKind(bytes.value) === undefined ? csvSources(bytes.value, file) : workbook(bytes.value, file, sheet);
  if (!sources.ok) return sources;
  // the separator that parts most
  const widest = sources.value.sources
    .map((source) => {
      const head = source.head();
      return { source, cells: head.ok ? head.value.reduce((sum, { cells }) => sum + cells.length, 0) : 0 };
    })
    .reduce((best, one) => (one.cells > best.cells ? one : best));
  const rows: Row[] = [];
  const all = widest.source.all((row) => rows.push(row));
  if (!all.ok) return all;
  return { ok: true, value: [...rows, ...all.value.lost].sort((a, b) => a.row - b.row) };
}

function workbook(bytes: Uint8Array, file: string, sheet: string | undefined) {
  const sources = workbookSources(bytes, file, sheet);
  return sources.ok ? { ok: true as const, value: { sources: sources.value, notices: [] } } : sources;
}
