import type { Canvas, TextStyle } from '../pdf/canvas.ts';
import { layText, setText } from '../typeset/set-text.ts';
import type { Languages, Text } from '../typeset/text.ts';
import type { CardSize } from './card-size.ts';

/** Where something is set on a card: with a canvas that draws nothing, only its height is asked. */
export interface Pen {
  readonly canvas: Canvas;
  readonly size: CardSize;
  readonly languages: Languages;
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

/** Share of the usual leading: a card is read at arm’s length, in few words a line. */
const TIGHT = 0.94;

/** Sets a text in lines, in the languages of the card; gives the height they take. */
export function say({ canvas, languages, x, y, width }: Pen, text: Text, style: TextStyle): number {
  return setText(canvas, layText(canvas, text, width, style, languages, TIGHT), { x, y }, TIGHT);
}

/** A box to tick. */
export const tickBox = ({ canvas }: Pen, x: number, y: number, side: number): void =>
  canvas.box({ x, y }, side, side, { stroke: 'ink', line: 0.35 });
