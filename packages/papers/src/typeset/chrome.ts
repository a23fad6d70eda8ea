import type { Canvas } from '../pdf/canvas.ts';
import type { PageNote, Sheet } from './flow.ts';
import { type Languages, onOneLine, said } from './text.ts';

/** Whose paper it is, as their settings say. */
export interface Organisation {
  readonly name: string;
  /** a line or two under the name */
  readonly address?: string;
  /** their mark, PNG or JPEG */
  readonly mark?: Uint8Array;
}

/** Head and foot of a sheet: what it is, what stands on it, whose it is, page x of y. The cover has no head. */
export const sheetChrome =
  (told: { readonly title: string; readonly foot: string; readonly cover: boolean }) =>
  (canvas: Canvas, sheet: Sheet, { page, of, section }: PageNote, languages: Languages): void => {
    const [left, right] = [sheet.left, sheet.width - sheet.right];
    const quiet = { size: 7.5, ink: 'quiet' } as const;
    if (!told.cover || page > 1) {
      canvas.text({ x: left, y: 14 }, told.title, quiet);
      canvas.text({ x: right, y: 14 }, section, { ...quiet, face: 'bold', anchor: 'end' });
      canvas.line({ x: left, y: 16.2 }, { x: right, y: 16.2 }, { line: 0.15 });
    }
    const foot = sheet.height - 10;
    canvas.line({ x: left, y: foot - 4 }, { x: right, y: foot - 4 }, { line: 0.15 });
    canvas.text({ x: left, y: foot }, told.foot, quiet);
    canvas.text({ x: right, y: foot }, onOneLine(said('paper.page', { page, of }), languages), { ...quiet, anchor: 'end' });
  };

const MARK = { width: 42, height: 18 } as const;

/** Mark and name of the organisation at the head of a cover; gives the height it took, mm. */
export function letterhead(canvas: Canvas, sheet: Sheet, organisation: Organisation | undefined): number {
  if (!organisation) return 0;
  const right = sheet.width - sheet.right;
  if (organisation.mark) canvas.image(organisation.mark, { x: sheet.left, y: 14 }, MARK.width, MARK.height);
  canvas.text({ x: right, y: 20 }, organisation.name, { size: 11, face: 'bold', anchor: 'end' });
  for (const [i, line] of (organisation.address ?? '').split('\n').entries())
    canvas.text({ x: right, y: 25 + i * 4 }, line, { size: 8, ink: 'quiet', anchor: 'end' });
  return MARK.height;
}
