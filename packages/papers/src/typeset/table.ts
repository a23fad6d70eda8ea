import type { Ink } from '../pdf/ink.ts';
import type { Face } from '../pdf/letters.ts';
import { baseOf, type Flow, leadingOf, setLines } from './flow.ts';

interface CellStyle {
  readonly text: string;
  readonly face?: Face;
  readonly ink?: Ink;
  /** struck through: no longer counts, and stays readable */
  readonly struck?: boolean;
}
type Cell = string | CellStyle;

interface Column<R> {
  readonly head: string;
  /** share of the table's width */
  readonly width: number;
  readonly align?: 'left' | 'right';
  readonly cell: (row: R) => Cell;
}

const PAD = { side: 1.1, above: 0.75, below: 0.85 } as const;

export interface OpenTable<R> {
  readonly add: (row: R) => void;
  /** Leaves room after the last row. */
  readonly end: () => void;
}

/** Ruled rows under a head that is repeated on every page; a row is never torn apart. */
export function table<R>(flow: Flow, columns: readonly Column<R>[], rows: Iterable<R>, options: { readonly size?: number } = {}): void {
  const open = openTable(flow, columns, options);
  for (const row of rows) open.add(row);
  open.end();
}

/** A table whose rows come one after the other, as many as there are. */
export function openTable<R>(flow: Flow, columns: readonly Column<R>[], { size = 8 }: { readonly size?: number } = {}): OpenTable<R> {
  const whole = columns.reduce((sum, { width }) => sum + width, 0);
  let x = flow.left;
  const placed = columns.map((column) => {
    const width = (column.width / whole) * flow.width;
    const at = { column, x, width };
    x += width;
    return at;
  });
  const leading = leadingOf(size);
  const { canvas } = flow;

  const headless = columns.every(({ head }) => head === '');
  const head = () => {
    if (headless) return;
    const lines = placed.map(({ column, width }) => flow.lines(column.head, width - 2 * PAD.side, { size: size - 0.5, face: 'bold' }));
    const height = Math.max(...lines.map(({ length }) => length)) * leadingOf(size - 0.5) + 1.8;
    flow.need(height + 2 * (leading + PAD.above + PAD.below));
    for (const [i, { column, x: left, width }] of placed.entries()) {
      const top = flow.y() + height - 1 - lines[i]!.length * leadingOf(size - 0.5);
      const right = column.align === 'right';
      setLines(
        canvas,
        lines[i]!,
        { x: right ? left + width - PAD.side : left + PAD.side, y: top },
        { size: size - 0.5, face: 'bold', ink: 'quiet', anchor: right ? 'end' : 'start' },
      );
    }
    flow.move(height);
    canvas.line({ x: flow.left, y: flow.y() }, { x: flow.left + flow.width, y: flow.y() }, { stroke: 'ink', line: 0.3 });
  };

  const add = (row: R) => {
    let most = 1;
    const cells = placed.map(({ column, width }) => {
      const cell = column.cell(row);
      const told: CellStyle = typeof cell === 'string' ? { text: cell } : cell;
      const lines = flow.lines(told.text, width - 2 * PAD.side, { size, ...(told.face ? { face: told.face } : {}) });
      most = Math.max(most, lines.length);
      return { told, lines };
    });
    const height = most * leading + PAD.above + PAD.below;
    if (flow.need(height)) head();
    const top = flow.y() + PAD.above;
    for (const [i, { column, x: left, width }] of placed.entries()) {
      const { told, lines } = cells[i]!;
      const right = column.align === 'right';
      const style = { size, face: told.face ?? 'regular', ink: told.ink ?? 'ink', anchor: right ? 'end' : 'start' } as const;
      setLines(canvas, lines, { x: right ? left + width - PAD.side : left + PAD.side, y: top }, style);
      if (!told.struck) continue;
      for (const [at, line] of lines.entries()) {
        const y = top + baseOf(size) + at * leading - 0.9;
        canvas.line({ x: left + PAD.side, y }, { x: left + PAD.side + canvas.widthOf(line, style), y }, { stroke: 'ink', line: 0.25 });
      }
    }
    flow.move(height);
    canvas.line({ x: flow.left, y: flow.y() }, { x: flow.left + flow.width, y: flow.y() }, { stroke: 'rule', line: 0.1 });
  };

  head();
  return { add, end: () => flow.move(3) };
}
