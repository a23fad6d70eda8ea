import type { PerLine } from '../page/card/tick-layout.ts';

/** How a card is set: its side in mm, letters in points. */
export interface CardSize {
  readonly width: number;
  readonly height: number;
  readonly margin: number;
  readonly tag: number;
  readonly title: number;
  readonly text: number;
  readonly small: number;
  /** the setting: the largest thing on the card */
  readonly big: number;
  readonly number: number;
  /** side of a tick box, mm */
  readonly box: number;
  readonly name: number;
  readonly code: number;
  /** a drawing smaller than these cannot be read, mm; with its key where that stands under it */
  readonly leastDrawing: number;
  readonly leastRing: number;
  readonly mostDrawing: number;
  readonly perLine: readonly PerLine[];
}

export const CARD_SIZES = {
  /** for lamination, and two on a sheet of A4 */
  A5: {
    width: 148,
    height: 210,
    margin: 7,
    tag: 25,
    title: 11,
    text: 8.8,
    small: 7.8,
    big: 22,
    number: 13,
    box: 4.6,
    name: 29,
    code: 21,
    leastDrawing: 42,
    leastRing: 58,
    mostDrawing: 92,
    perLine: [5, 10],
  },
  /** for a pocket: the same words, more sides */
  A6: {
    width: 105,
    height: 148,
    margin: 5,
    tag: 18,
    title: 9,
    text: 7.6,
    small: 6.8,
    big: 17,
    number: 11,
    box: 3.9,
    name: 22,
    code: 18,
    leastDrawing: 51,
    leastRing: 76,
    mostDrawing: 104,
    perLine: [5],
  },
} as const satisfies Readonly<Record<string, CardSize>>;

/** A4: two sides of A5 beside each other, for the printer in the van. */
export type CardPaper = keyof typeof CARD_SIZES | 'A4';
