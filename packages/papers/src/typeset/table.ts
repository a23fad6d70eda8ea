import type { Ink } from '../pdf/ink.ts';
import type { Face } from '../pdf/letters.ts';
import type { Flow } from './flow.ts';
import { baseOf, leadingOf, setText } from './set-text.ts';
import type { Text } from './text.ts';

interface CellStyle {
  readonly text: Text;
  readonly face?: Face;
  readonly ink?: Ink;
  /** struck through: no longer counts, and stays readable */
  readonly struck?: boolean;
}
type Cell = Text | CellStyle;

interface Column<R> {
  readonly head: Text;
  /** share of the table's width */
  readonly width: number;
  readonly align?: 'left' | 'right';
  readonly cell: (row: R) => Cell;
}

/** Long tables stand closer: their rules part the rows. */
const CLOSE_BELOW = 8;
const padOf = (size: number) => (size < CLOSE_BELOW ? { side: 1.1, above: 0.4, below: 0.6 } : { side: 1.1, above: 0.75, below: 0.85 });

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
  const pad = padOf(size);
  const whole = columns.reduce((sum, { width }) => sum + width, 0);
  let x = flow.left;
  const placed = columns.map((column) => {
    const width = (column.width / whole) * flow.width;
    const right = column.align === 'right';
    const at = { column, width, at: right ? x + width - pad.side : x + pad.side, anchor: right ? 'end' : 'start' } as const;
    x += width;
    return at;
  });
  const leading = leadingOf(size);
  const { canvas } = flow;
  const headless = columns.every(({ head }) => head === '');
  const head = () => {
    if (headless) return;
    const heads = placed.map(({ column, width, anchor }) =>
      flow.lay(column.head, width - 2 * pad.side, { size: size - 0.5, face: 'bold', ink: 'quiet', anchor }),
    );
    const height = Math.max(...heads.map((one) => one.height)) + 1.8;
    flow.need(height + 2 * (leading + pad.above + pad.below));
    for (const [i, { at }] of placed.entries()) setText(canvas, heads[i]!, { x: at, y: flow.y() + height - 1 - heads[i]!.height });
    flow.move(height);
    canvas.line({ x: flow.left, y: flow.y() }, { x: flow.left + flow.width, y: flow.y() }, { stroke: 'ink', line: 0.3 });
  };
  const add = (row: R) => {
    let most = leading;
    const cells = placed.map(({ column, width, anchor }) => {
      const cell = column.cell(row);
      const { text, face = 'regular', ink = 'ink', struck = false }: CellStyle = typeof cell === 'object' ? cell : { text: cell };
      const laid = flow.lay(text, width - 2 * pad.side, { size, face, ink, anchor });
      most = Math.max(most, laid.height);
      return { laid, struck };
    });
    const height = most + pad.above + pad.below;
    if (flow.need(height)) head();
    const top = flow.y() + pad.above;
    for (const [i, { at }] of placed.entries()) {
      const { laid, struck } = cells[i]!;
      setText(canvas, laid, { x: at, y: top });
      if (!struck) continue;
      for (const [line, { text, style }] of laid.lines.entries()) {
        const y = top + baseOf(size) + line * leading - 0.9;
        canvas.line({ x: at, y }, { x: at + canvas.widthOf(text, style), y }, { stroke: 'ink', line: 0.25 });
      }
    }
    flow.move(height);
    canvas.line({ x: flow.left, y: flow.y() }, { x: flow.left + flow.width, y: flow.y() }, { stroke: 'rule', line: 0.1 });
  };
  head();
  return { add, end: () => flow.move(3) };
}
