import type { At } from '../drawing/index.ts';
import type { Canvas, TextStyle } from '../pdf/canvas.ts';
import { POINTS_PER_MM } from '../pdf/open-pdf.ts';
import { breakLines } from './break-lines.ts';
import { inBoth, type Languages, type Text } from './text.ts';

/** Points of a leading that lets lines of this size breathe, in mm. */
export const leadingOf = (size: number): number => (size * 1.32) / POINTS_PER_MM;

/** How far the base line lies under the upper edge of a line, mm. */
export const baseOf = (size: number): number => (size * 0.98) / POINTS_PER_MM;

/** Lines of a text, each as it is set: those of the second language smaller and lighter, under those of the first. */
export interface SetText {
  readonly lines: readonly { readonly text: string; readonly style: TextStyle }[];
  /** mm */
  readonly height: number;
}

/** Share of the first language's size, and the smallest that is still read, points. */
const SECOND = { share: 0.82, least: 5.6 } as const;

/** How the second language is set beneath a text of this style. */
export const secondStyle = ({ ink = 'ink', anchor = 'start', size }: TextStyle): TextStyle => ({
  size: Math.min(size, Math.max(SECOND.least, size * SECOND.share)),
  face: 'regular',
  ink: ink === 'ink' ? 'quiet' : ink,
  anchor,
});

/** Breaks a text into the lines it takes at this width; `tight` draws the leading together. */
export function layText(canvas: Canvas, text: Text, width: number, style: TextStyle, languages: Languages, tight = 1): SetText {
  const [first, second] = inBoth(text, languages);
  const of = (one: string, own: TextStyle) =>
    breakLines(one, width, (line) => canvas.widthOf(line, own)).map((line) => ({ text: line, style: own }));
  const lines = [...of(first, style), ...(second === undefined || second === '' ? [] : of(second, secondStyle(style)))];
  return { lines, height: lines.reduce((sum, line) => sum + leadingOf(line.style.size) * tight, 0) };
}

/** Sets lines from `at` (upper edge) downwards; gives the height they took. */
export function setText(canvas: Canvas, { lines, height }: SetText, at: At, tight = 1): number {
  let y = at.y;
  for (const { text, style } of lines) {
    canvas.text({ x: at.x, y: y + baseOf(style.size) * tight }, text, style);
    y += leadingOf(style.size) * tight;
  }
  return height;
}
