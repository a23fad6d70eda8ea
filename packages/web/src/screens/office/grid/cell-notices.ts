import type { Notice } from '@clampwright/core';
import type { RowNotices } from './grid.tsx';

/** Notices of a table by the row and column they were found in; its headings are row 1 of the file. */
export function cellNotices(said: readonly Notice[], headings: readonly string[]): ReadonlyMap<number, RowNotices> {
  const found = new Map<number, Map<number, Notice[]>>();
  for (const one of said) {
    const { row, column } = one.place!;
    if (row === undefined || row < 2) continue;
    const col = column === undefined ? -1 : headings.indexOf(column);
    const cells = found.get(row - 2) ?? new Map<number, Notice[]>();
    cells.set(col, [...(cells.get(col) ?? []), one]);
    found.set(row - 2, cells);
  }
  return found;
}
