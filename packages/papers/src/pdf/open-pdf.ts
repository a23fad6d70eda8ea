import PDFDocument from 'pdfkit';
import type { Letters } from './letters.ts';

/** What a reader shows of a file before it is opened. */
export interface PdfAbout {
  readonly title: string;
  readonly subject: string;
  /** organisation that hands the paper out */
  readonly author?: string;
  /** engine that wrote it */
  readonly engine: string;
  /** of most of its text */
  readonly language: string;
  /** instant it is said to be made: the same input gives the same bytes */
  readonly made: Date;
}

export interface Pdf {
  readonly doc: PDFKit.PDFDocument;
  /** Ends the document and hands out its bytes. */
  readonly bytes: () => Promise<Uint8Array>;
}

export const POINTS_PER_MM = 72 / 25.4;

/**
 * An empty PDF 1.7 that claims PDF/A-2b: letters embedded, sRGB output intent, XMP. Runs in Node and in a browser.
 */
export function openPdf(letters: Letters, { title, subject, author, engine, language, made }: PdfAbout): Pdf {
  const doc = new PDFDocument({
    autoFirstPage: false,
    pdfVersion: '1.7',
    subset: 'PDF/A-2b' as never,
    lang: language,
    displayTitle: true,
    // none of the reader's own: PDF/A wants every face in the file
    font: null as never,
    info: {
      Title: title,
      Subject: subject,
      ...(author === undefined ? {} : { Author: author }),
      Creator: `clampwright-${engine}`,
      Producer: 'PDFKit',
      CreationDate: made,
      ModDate: made,
    },
  });
  for (const [face, bytes] of Object.entries(letters)) doc.registerFont(face, bytes as never);
  const parts: Uint8Array[] = [];
  doc.on('data', (part: Uint8Array) => parts.push(part));
  return {
    doc,
    bytes: () =>
      new Promise((resolve, reject) => {
        doc.on('error', reject);
        doc.on('end', () => resolve(joined(parts)));
        doc.end();
      }),
  };
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
