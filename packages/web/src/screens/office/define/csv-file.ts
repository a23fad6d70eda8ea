import { type CsvText, csvBytes, csvText, withCells, withoutRecords, withRecords } from '@clampwright/papers/edit';
import { change } from '../../../draft/desk.ts';
import { withFiles } from '../../../draft/draft.ts';
import type { CellChange } from '../grid/cells.ts';

/** Files taken apart, by their bytes: an edit has its file at hand, whatever its length. */
const known = new WeakMap<Uint8Array, CsvText | { readonly broken: true }>();

/** A CSV file of the draft taken apart; `undefined` where it is none. */
export function csvOf(bytes: Uint8Array | undefined): CsvText | undefined {
  if (!bytes) return undefined;
  const found = known.get(bytes) ?? csvText(bytes) ?? { broken: true as const };
  known.set(bytes, found);
  return 'broken' in found ? undefined : found;
}

function write(file: string, to: (before: CsvText) => CsvText): void {
  change((files) => {
    const before = csvOf(files.get(file) ?? new Uint8Array());
    if (!before) return files;
    const after = to(before);
    const bytes = csvBytes(after);
    known.set(bytes, after);
    return withFiles(files, { [file]: bytes });
  });
}

/** Changes cells below the headings, which end at record `head`; rows beyond the last are added. */
export const changeCells = (file: string, head: number, changes: readonly CellChange[]): void =>
  write(file, (before) => {
    const width = before.records[head - 1]?.cells.length ?? 0;
    const last = Math.max(...changes.map(({ row }) => row)) + head;
    const lacking = Math.max(0, last + 1 - before.records.length);
    const wider =
      lacking === 0
        ? before
        : withRecords(
            before,
            before.records.length,
            Array.from({ length: lacking }, () => empty(width)),
          );
    // a row is as long as the headings, or readers take it for a slip
    const short = new Set(changes.map(({ row }) => row + head).filter((record) => (wider.records[record]?.cells.length ?? 0) < width));
    const padded = [...short].map((record) => ({ record, column: width - 1, text: wider.records[record]?.cells[width - 1] ?? '' }));
    return withCells(wider, [...padded, ...changes.map(({ row, col, text }) => ({ record: row + head, column: col, text }))]);
  });

const empty = (width: number) => new Array<string>(width).fill('');

export const insertRow = (file: string, head: number, at: number): void =>
  write(file, (before) => withRecords(before, at + head, [empty(before.records[head - 1]?.cells.length ?? 1)]));

export const removeRows = (file: string, head: number, rows: readonly number[]): void =>
  write(file, (before) => withoutRecords(before, new Set(rows.map((row) => row + head))));

/** A further column at the right; every row below the headings gets a cell. */
export const addColumn = (file: string, head: number, heading: string): void => write(file, (before) => withColumn(before, head, heading));

function withColumn(before: CsvText, head: number, heading: string): CsvText {
  const width = before.records[head - 1]?.cells.length ?? 0;
  const below = before.records.flatMap(({ cells }, record) =>
    record >= head && cells.length > 0 ? [{ record, column: width, text: '' }] : [],
  );
  return withCells(before, [{ record: head - 1, column: width, text: heading }, ...below]);
}
