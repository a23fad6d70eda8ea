/** PDF: an open document, a canvas in millimetres, and what is drawn on it. */
export { type BoxStyle, type Canvas, openCanvas, type TextStyle } from './canvas.ts';
export { drawQr } from './draw-qr.ts';
export { drawScene } from './draw-scene.ts';
export { BLACK_INK, type Ink, REPORT_INK } from './ink.ts';
export { type Face, LETTER_FILES, type Letters } from './letters.ts';
export { openPdf, type Pdf, type PdfAbout, POINTS_PER_MM } from './open-pdf.ts';
