import type { At } from './cells.ts';

interface Where {
  readonly here: At;
  readonly last: At;
  readonly ctrl: boolean;
  /** rows in sight */
  readonly page: number;
  readonly cell: (at: At) => string;
}

/** Where a key leads, as in a spreadsheet: with Ctrl to the end of what is filled. `undefined`: it leads nowhere. */
export function moved(key: string, { here, last, ctrl, page, cell }: Where): At | undefined {
  const run = (rows: number, cols: number): At => {
    const next = (at: At): At => ({ row: at.row + rows, col: at.col + cols });
    const inside = ({ row, col }: At) => row >= 0 && col >= 0 && row <= last.row && col <= last.col;
    if (!ctrl) return next(here);
    let at = here;
    const filled = inside(next(at)) && cell(next(at)) !== '';
    while (inside(next(at)) && (filled ? cell(next(at)) !== '' : cell(next(at)) === '')) at = next(at);
    return filled || !inside(next(at)) ? at : next(at);
  };
  switch (key) {
    case 'ArrowUp':
      return run(-1, 0);
    case 'ArrowDown':
      return run(1, 0);
    case 'ArrowLeft':
      return run(0, -1);
    case 'ArrowRight':
      return run(0, 1);
    case 'PageUp':
      return { ...here, row: here.row - page };
    case 'PageDown':
      return { ...here, row: here.row + page };
    case 'Home':
      return { row: ctrl ? 0 : here.row, col: 0 };
    case 'End':
      return { row: ctrl ? last.row : here.row, col: last.col };
    default:
      return undefined;
  }
}
