import type { Notice } from '@clampwright/core';
import type { Table } from './place.ts';
import { columnLetter } from './row.ts';

/** A table that runs across, a setting a column, as one that runs down: what stood first in each row are its headings. */
export function turned(table: Table): { readonly table: Table; readonly placed: (notice: Notice) => Notice } {
  const lines = [{ row: table.headingRow, cells: table.headings, exact: [] as readonly number[] }, ...table.rows];
  const width = Math.max(...lines.map(({ cells }) => cells.findLastIndex((cell) => cell.trim() !== '') + 1));
  const columns = Array.from({ length: width - 1 }, (_, at) => at + 1).filter((at) =>
    lines.some(({ cells }) => (cells[at] ?? '').trim() !== ''),
  );
  const rows = columns.map((at) => ({
    row: at,
    cells: lines.map(({ cells }) => cells[at] ?? ''),
    exact: lines.flatMap(({ exact }, line) => (exact?.includes(at) ? [line] : [])),
  }));
  const letters = new Map(lines.map(({ row }, line) => [columnLetter(line), row]));
  /** where it really stands: the row of the heading, in the column of the setting */
  const placed = (notice: Notice): Notice => {
    const { row, letter } = notice.place ?? {};
    if (row === undefined) return notice;
    const stands = letter === undefined ? undefined : letters.get(letter);
    return { ...notice, place: { ...notice.place, row: stands ?? table.headingRow, letter: columnLetter(row) } };
  };
  return { table: { ...table, headingRow: 0, headings: lines.map(({ cells }) => cells[0] ?? ''), rows }, placed };
}
