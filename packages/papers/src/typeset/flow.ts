import type { At } from '../drawing/index.ts';
import { type Canvas, openCanvas, type TextStyle, uninked } from '../pdf/canvas.ts';
import type { Ink } from '../pdf/ink.ts';
import { type Pdf, POINTS_PER_MM } from '../pdf/open-pdf.ts';
import { breakLines } from './break-lines.ts';
import { layText, leadingOf, type SetText, setText } from './set-text.ts';
import type { Languages, Text } from './text.ts';

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
  /** Names what follows for the running head, and puts it into the bookmarks; level 1 is outermost. */
  readonly section: (title: string, level: 1 | 2) => void;
  readonly languages: Languages;
  /** A text as it is set in this style and width, in the languages of the paper. */
  readonly lay: (text: Text, width: number, style: TextStyle) => SetText;
  /** Lines of a text in one language. */
  readonly lines: (text: string, width: number, style: TextStyle) => string[];
}

/** What stands about the text of a page. */
type Chrome = (canvas: Canvas, sheet: Sheet, note: PageNote, languages: Languages) => void;

export interface Composition {
  readonly sheet: Sheet;
  readonly inks: Readonly<Record<Ink, string>>;
  readonly languages: Languages;
  readonly chrome: Chrome;
  /** Puts everything on paper: called once to count the pages and once to draw them, so it must do the same both times. */
  readonly compose: (flow: Flow) => void | Promise<void>;
}

/**
 * Sets a paper. It is composed twice: “page x of y” and the running heads are known only when all pages are, and keeping a thousand drawn
 * pages until then would take a gigabyte. The first time nothing is drawn, the second time each page is written when it is full.
 */
export async function setPaper(pdf: Pdf, { sheet, inks, languages, chrome, compose }: Composition): Promise<Uint8Array> {
  const real = openCanvas(pdf.doc, inks);
  const counting = openFlow(sheet, uninked(real), languages, {});
  await compose(counting.flow);
  const sections = counting.sections();
  let chapter: PDFKit.PDFOutline | undefined;
  const drawing = openFlow(sheet, real, languages, {
    turned(page) {
      pdf.doc.addPage({ size: [sheet.width * POINTS_PER_MM, sheet.height * POINTS_PER_MM], margin: 0 });
      real.fresh();
      chrome(real, sheet, { page, of: sections.length, section: sections[page - 1] ?? '' }, languages);
    },
    bookmarked(title, level, y) {
      const place = { top: Math.max(0, y - 8) * POINTS_PER_MM } as never;
      if (level === 1 || !chapter) chapter = pdf.doc.outline.addItem(title, place);
      else chapter.addItem(title, place);
    },
  });
  await compose(drawing.flow);
  return pdf.bytes();
}

interface Hooks {
  readonly turned?: (page: number) => void;
  readonly bookmarked?: (title: string, level: 1 | 2, y: number) => void;
}

/** A name stands in the running head of its own page where it begins this near to the top, mm. */
const NEAR_TOP = 20;

function openFlow(
  sheet: Sheet,
  canvas: Canvas,
  languages: Languages,
  { turned, bookmarked }: Hooks,
): { readonly flow: Flow; readonly sections: () => readonly string[] } {
  const sections: string[] = [];
  let y = 0;
  let section = '';
  const turn = () => {
    sections.push(section);
    y = sheet.top;
    turned?.(sections.length);
  };
  const room = () => sheet.height - sheet.bottom - y;
  turn();
  const flow: Flow = {
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
    section(title, level) {
      section = title;
      if (y - sheet.top < NEAR_TOP) sections[sections.length - 1] = title;
      bookmarked?.(title, level, y);
    },
    languages,
    lay: (text, width, style) => layText(canvas, text, width, style, languages),
    lines: (text, width, style) => breakLines(text, width, (one) => canvas.widthOf(one, style)),
  };
  return { flow, sections: () => sections };
}

/** Sets lines of one style from `at` (upper edge) downwards; gives the height they took. */
export function setLines(canvas: Canvas, lines: readonly string[], at: At, style: TextStyle): number {
  return setText(canvas, { lines: lines.map((text) => ({ text, style })), height: lines.length * leadingOf(style.size) }, at);
}
