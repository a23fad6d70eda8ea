import type { At } from '../drawing/index.ts';
import { type Canvas, openCanvas, type TextStyle } from '../pdf/canvas.ts';
import type { Ink } from '../pdf/ink.ts';
import { type Pdf, POINTS_PER_MM } from '../pdf/open-pdf.ts';
import { breakLines } from './break-lines.ts';

/** A sheet of paper and what is left free about its text, mm. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const A4: Sheet = { width: 210, height: 297, left: 20, right: 18, top: 24, bottom: 20 };

/** What stands about the text of a page, drawn when all pages are known. */
export interface PageNote {
  readonly page: number;
  readonly of: number;
  readonly section: string;
}

/** Text that runs down pages: whoever sets something asks for room and moves the pen. */
export interface Flow {
  readonly canvas: Canvas;
  readonly sheet: Sheet;
  readonly left: number;
  readonly width: number;
  /** where the next thing goes, mm from the upper edge */
  readonly y: () => number;
  readonly move: (mm: number) => void;
  /** mm left on this page */
  readonly room: () => number;
  /** Turns the page unless so much is left; says whether it turned. */
  readonly need: (mm: number) => boolean;
  readonly turn: () => void;
  readonly pages: () => number;
  /** Names what follows for the running head, and puts it into the bookmarks; level 1 is outermost. */
  readonly section: (title: string, level: 1 | 2) => void;
  /** Lines of a text in this style and width. */
  readonly lines: (text: string, width: number, style: TextStyle) => string[];
  /** Ends the paper: draws what stands about the text of every page. */
  readonly finish: (chrome: (canvas: Canvas, sheet: Sheet, note: PageNote) => void) => Promise<Uint8Array>;
}

/** Opens a flow on an empty document; the first page is turned at once. */
export function openFlow(pdf: Pdf, sheet: Sheet, inks: Readonly<Record<Ink, string>>): Flow {
  const { doc } = pdf;
  const canvas = openCanvas(doc, inks);
  const sections: string[] = [];
  let y = 0;
  let pages = 0;
  let section = '';
  let chapter: PDFKit.PDFOutline | undefined;
  const outline = doc.outline;

  const turn = () => {
    doc.addPage({ size: [sheet.width * POINTS_PER_MM, sheet.height * POINTS_PER_MM], margin: 0 });
    sections[pages] = section;
    pages += 1;
    y = sheet.top;
  };
  const room = () => sheet.height - sheet.bottom - y;
  turn();
  return {
    canvas,
    sheet,
    left: sheet.left,
    width: sheet.width - sheet.left - sheet.right,
    y: () => y,
    move: (mm) => {
      y += mm;
    },
    room,
    need(mm) {
      if (mm <= room()) return false;
      turn();
      return true;
    },
    turn,
    pages: () => pages,
    section(title, level) {
      section = title;
      // a page is called by what begins on it
      if (y - sheet.top < 20) sections[pages - 1] = title;
      const place = { top: Math.max(0, y - 8) * POINTS_PER_MM } as never;
      if (level === 1 || !chapter) chapter = outline.addItem(title, place);
      else chapter.addItem(title, place);
    },
    lines: (text, width, style) => breakLines(text, width, (one) => canvas.widthOf(one, style)),
    async finish(chrome) {
      for (let page = 0; page < pages; page += 1) {
        doc.switchToPage(page);
        chrome(canvas, sheet, { page: page + 1, of: pages, section: sections[page] ?? '' });
      }
      return pdf.bytes();
    },
  };
}

/** Points of a leading that lets lines of this size breathe, in mm. */
export const leadingOf = (size: number): number => (size * 1.32) / POINTS_PER_MM;

/** How far the base line lies under the upper edge of a line, mm. */
export const baseOf = (size: number): number => (size * 0.98) / POINTS_PER_MM;

/** Sets lines from `at` (upper edge) downwards; gives the height they took. */
export function setLines(canvas: Canvas, lines: readonly string[], at: At, style: TextStyle): number {
  const leading = leadingOf(style.size);
  for (const [i, line] of lines.entries()) canvas.text({ x: at.x, y: at.y + baseOf(style.size) + i * leading }, line, style);
  return lines.length * leading;
}
