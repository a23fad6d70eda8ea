/** A place in a grid. */
export interface At {
  readonly row: number;
  readonly col: number;
}

/** A rectangle of cells, edges included. */
export interface Range {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** One cell with what it shall hold. */
export interface CellChange extends At {
  readonly text: string;
}

export const rangeOf = (a: At, b: At): Range => ({
  top: Math.min(a.row, b.row),
  bottom: Math.max(a.row, b.row),
  left: Math.min(a.col, b.col),
  right: Math.max(a.col, b.col),
});

export const cellsIn = ({ top, bottom, left, right }: Range): At[] =>
  Array.from({ length: bottom - top + 1 }, (_, row) =>
    Array.from({ length: right - left + 1 }, (_, col) => ({ row: top + row, col: left + col })),
  ).flat();

/** Cells as spreadsheets exchange them: tabs and lines; a cell with either stands in quotation marks. */
export const toTabbed = (rows: readonly (readonly string[])[]): string =>
  rows.map((cells) => cells.map((cell) => (/[\t\n"]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join('\t')).join('\n');

/** What a spreadsheet put on the clipboard, as rows of cells. */
export function fromTabbed(text: string): string[][] {
  const rows: string[][] = [[]];
  const clean = text.replace(/\r\n?/g, '\n').replace(/\n$/, '');
  let at = 0;
  while (at <= clean.length) {
    let cell = '';
    if (clean[at] === '"') {
      at += 1;
      for (;;) {
        const close = clean.indexOf('"', at);
        cell += clean.slice(at, close === -1 ? clean.length : close);
        at = close === -1 ? clean.length : close + 1;
        if (close === -1 || clean[at] !== '"') break;
        cell += '"';
        at += 1;
      }
    }
    const end = /[\t\n]/.exec(clean.slice(at))?.index ?? clean.length - at;
    rows.at(-1)!.push((cell + clean.slice(at, at + end)).trim());
    at += end;
    if (clean[at] === '\n') rows.push([]);
    at += 1;
  }
  return rows;
}

/** Pasted cells laid out from the top left of a range; one cell, or one row, fills the whole of it. */
export function pasted(rows: readonly (readonly string[])[], { top, bottom, left, right }: Range): CellChange[] {
  const height = Math.max(rows.length, rows.length === 1 ? bottom - top + 1 : 0);
  const width = Math.max(...rows.map(({ length }) => length));
  const across = width === 1 ? Math.max(1, right - left + 1) : width;
  return Array.from({ length: height }, (_, row) =>
    Array.from({ length: across }, (_, col): CellChange => {
      const from = rows[row % rows.length]!;
      return { row: top + row, col: left + col, text: from[width === 1 ? 0 : col] ?? '' };
    }),
  ).flat();
}
