/** Papers that go out: PDF. Apart from the pages, so that nobody who only plans loads a typesetter. */
export { type CardPaper, cardsPdf } from './card-pdf/index.ts';
export { kitPdf } from './kit-pdf/index.ts';
export { readOrganisation } from './organisation/read-organisation.ts';
export type { Letters } from './pdf/letters.ts';
export type { PaperOptions } from './pdf/paper-options.ts';
export { planPdf } from './plan-pdf/index.ts';
export { type ReportSource, reportPdf, reportSourceOf } from './report/index.ts';
export { type TagPaper, tagsPdf } from './tag-pdf/index.ts';
export type { Organisation } from './typeset/index.ts';
