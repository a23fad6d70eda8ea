import type { Notice, Outcome } from '@clampwright/core';
import type { Decimals } from './read-number.ts';
import type { Row } from './row.ts';

/** So many rows are looked at to find the headings. */
export const HEAD_ROWS = 40;

/** Rows of cells with their place, wherever they come from: a sheet of a workbook, or a CSV file read with one separator. */
export interface TableSource {
  readonly file: string;
  readonly sheet?: string;
  readonly hidden: boolean;
  readonly decimals: Decimals;
  /** rows shorter or longer than the headings are usual here, and no sign of a slip */
  readonly ragged: boolean;
  /** the first rows */
  readonly head: () => Outcome<readonly Row[]>;
  /** Hands out every row as it is read; where it is refused in the end, what was handed out counts for nothing. */
  readonly all: (visit: (row: Row) => void) => Outcome<{ readonly lost: readonly Row[]; readonly notices: readonly Notice[] }>;
}
