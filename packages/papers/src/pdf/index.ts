/** PDF: an open document, a canvas in millimetres, and what is drawn on it. */
export { REPORT_INK } from './ink.ts';
export { openPdf } from './open-pdf.ts';
