import type { Canvas, TextStyle } from '../pdf/canvas.ts';
import { breakLines } from '../typeset/break-lines.ts';
import { baseOf, leadingOf } from '../typeset/flow.ts';
import type { CardSize } from './card-size.ts';

/** Where something is set on a card: with a canvas that draws nothing, only its height is asked. */
export interface Pen {
  readonly canvas: Canvas;
  readonly size: CardSize;
  /** left edge and width of the text, upper edge of the block; mm */
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export const moved = (pen: Pen, down: number, right = 0, width = pen.width - right): Pen => ({
  ...pen,
  x: pen.x + right,
  y: pen.y + down,
  width,
});

/** Sets a text in lines; gives the height they take. */
export function say({ canvas, x, y, width }: Pen, text: string, style: TextStyle): number {
  const leading = leadingOf(style.size) * 0.94;
  const lines = breakLines(text, width, (one) => canvas.widthOf(one, style));
  for (const [i, line] of lines.entries()) canvas.text({ x, y: y + baseOf(style.size) * 0.94 + i * leading }, line, style);
  return lines.length * leading;
}

/** A box to tick. */
export const tickBox = ({ canvas }: Pen, x: number, y: number, side: number): void =>
  canvas.box({ x, y }, side, side, { stroke: 'ink', line: 0.35 });
