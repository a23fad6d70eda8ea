import { openCanvas, type PageCanvas } from './canvas.ts';
import type { Ink } from './ink.ts';
import { type Pdf, POINTS_PER_MM } from './open-pdf.ts';

/** Sheets that are each laid out for themselves: cards, tags. */
export interface Sheets {
  readonly canvas: PageCanvas;
  readonly turn: (size: { readonly width: number; readonly height: number }) => void;
  /** Puts the open sheet into the bookmarks. */
  readonly bookmark: (title: string) => void;
}

export function openSheets({ doc }: Pdf, inks: Readonly<Record<Ink, string>>): Sheets {
  const canvas = openCanvas(doc, inks);
  return {
    canvas,
    turn({ width, height }) {
      doc.addPage({ size: [width * POINTS_PER_MM, height * POINTS_PER_MM], margin: 0 });
      canvas.fresh();
    },
    bookmark: (title) => void doc.outline.addItem(title),
  };
}
