import type { At } from '../drawing/index.ts';
import type { Ink } from './ink.ts';
import type { Face } from './letters.ts';
import { POINTS_PER_MM } from './open-pdf.ts';

export interface TextStyle {
  /** points */
  readonly size: number;
  readonly face?: Face;
  readonly ink?: Ink;
  readonly anchor?: 'start' | 'middle' | 'end';
}

export interface BoxStyle {
  readonly fill?: Ink;
  readonly stroke?: Ink;
  /** mm */
  readonly line?: number;
  readonly dashed?: boolean;
  /** mm */
  readonly radius?: number;
}

/** A page as one draws on it: millimetres from its upper left corner, letters in points, text on its base line. */
export interface Canvas {
  readonly text: (at: At, text: string, style: TextStyle) => void;
  /** mm */
  readonly widthOf: (text: string, style: Pick<TextStyle, 'size' | 'face'>) => number;
  readonly line: (from: At, to: At, style?: Pick<BoxStyle, 'stroke' | 'line' | 'dashed'>) => void;
  readonly box: (at: At, width: number, height: number, style: BoxStyle) => void;
  readonly path: (points: readonly At[], closed: boolean, style: BoxStyle) => void;
  readonly circle: (centre: At, radius: number, style: BoxStyle) => void;
  readonly image: (bytes: Uint8Array, at: At, width: number, height: number) => void;
}

/** Of every sign of DejaVu Sans Mono, em: 1233 of 2048. */
const MONO_ADVANCE = 1233 / 2048;
const MOST_KNOWN_WIDTHS = 50_000;
const pt = (mm: number) => mm * POINTS_PER_MM;

/** A canvas that remembers which ink it holds, until a page is turned. */
export interface PageCanvas extends Canvas {
  readonly fresh: () => void;
}

/** Takes a canvas's measure and draws nothing. */
export const uninked = ({ widthOf }: Canvas): Canvas => {
  const nothing = () => undefined;
  return { widthOf, text: nothing, line: nothing, box: nothing, path: nothing, circle: nothing, image: nothing };
};

/** Draws on whatever page of the document is open. */
export function openCanvas(doc: PDFKit.PDFDocument, inks: Readonly<Record<Ink, string>>): PageCanvas {
  let filled: Ink | undefined;
  let stroked = '';
  const fillWith = (ink: Ink) => {
    if (filled !== ink) doc.fillColor(inks[ink]);
    filled = ink;
  };
  /** by face: width at one point, so that a text is shaped once whatever its size */
  const widths: Record<Face, Map<string, number>> = { regular: new Map(), bold: new Map(), mono: new Map() };
  const unitWidth = (text: string, face: Face): number => {
    if (face === 'mono') return [...text].length * MONO_ADVANCE;
    const known = widths[face].get(text);
    if (known !== undefined) return known;
    if (widths[face].size > MOST_KNOWN_WIDTHS) widths[face].clear();
    const width = doc.font(face, 100).widthOfString(text, { lineBreak: false }) / 100;
    widths[face].set(text, width);
    return width;
  };
  const painted = ({ fill, stroke, line = 0.2, dashed = false }: BoxStyle) => {
    if (fill) fillWith(fill);
    if (stroke) {
      const pen = `${stroke} ${line} ${dashed}`;
      if (pen !== stroked) {
        doc.strokeColor(inks[stroke]).lineWidth(pt(line));
        if (dashed) doc.dash(pt(1.2), { space: pt(0.9) });
        else doc.undash();
      }
      stroked = pen;
    }
    if (fill && stroke) doc.fillAndStroke();
    else if (fill) doc.fill();
    else if (stroke) doc.stroke();
  };
  return {
    fresh() {
      filled = undefined;
      stroked = '';
    },
    // placed without `width`: with it, a label that nearly fills its place would be broken
    text({ x, y }, text, { size, face = 'regular', ink = 'ink', anchor = 'start' }) {
      if (text === '') return;
      const width = anchor === 'start' ? 0 : unitWidth(text, face) * size;
      const left = pt(x) - (anchor === 'middle' ? width / 2 : width);
      doc.font(face, size);
      fillWith(ink);
      // hashes hardly come twice: with `features` they are not kept for another time
      doc.text(text, left, pt(y), { lineBreak: false, baseline: 'alphabetic', ...(face === 'mono' ? { features: [] } : {}) });
    },
    widthOf: (text, { size, face = 'regular' }) => (unitWidth(text, face) * size) / POINTS_PER_MM,
    line(from, to, { stroke = 'rule', ...style } = {}) {
      doc.moveTo(pt(from.x), pt(from.y)).lineTo(pt(to.x), pt(to.y));
      painted({ ...style, stroke });
    },
    box({ x, y }, width, height, style) {
      if (style.radius) doc.roundedRect(pt(x), pt(y), pt(width), pt(height), pt(style.radius));
      else doc.rect(pt(x), pt(y), pt(width), pt(height));
      painted(style);
    },
    path(points, closed, style) {
      const [first, ...rest] = points;
      if (!first) return;
      doc.moveTo(pt(first.x), pt(first.y));
      for (const { x, y } of rest) doc.lineTo(pt(x), pt(y));
      if (closed) doc.closePath();
      doc.lineJoin('round');
      painted(style);
    },
    circle({ x, y }, radius, style) {
      doc.circle(pt(x), pt(y), pt(radius));
      painted(style);
    },
    image(bytes, { x, y }, width, height) {
      doc.image(bytes as never, pt(x), pt(y), { fit: [pt(width), pt(height)] });
    },
  };
}
