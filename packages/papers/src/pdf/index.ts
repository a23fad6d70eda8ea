/** PDF: an open document, a canvas in millimetres, and what is drawn on it. */
export { BLACK_INK, REPORT_INK } from './ink.ts';
export { openPdf } from './open-pdf.ts';
