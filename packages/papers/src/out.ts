/** Papers that go out: PDF, spreadsheets, calendar, the client's own form. Apart from the pages, so that nobody who only plans loads a typesetter. */

export { type DueDay, dueCalendar, dutyDays, planDays } from './calendar/due-dates.ts';
export { type CardPaper, cardsPdf } from './card-pdf/index.ts';
export { markedCopy } from './faults/marked-copy.ts';
export { type FilledForm, NoForm, planForms, workForms } from './form/index.ts';
export { kitPdf } from './kit-pdf/index.ts';
export { readOrganisation } from './organisation/read-organisation.ts';
export type { Letters } from './pdf/letters.ts';
export type { PaperOptions } from './pdf/paper-options.ts';
export { planPdf } from './plan-pdf/index.ts';
export { type ReportSource, reportPdf, reportSourceOf } from './report/index.ts';
export { tableCsv } from './sheet-out/csv.ts';
export { logTables } from './sheet-out/log-tables.ts';
export { planTables } from './sheet-out/plan-tables.ts';
export type { SheetTable } from './sheet-out/sheet-table.ts';
export { tablesXlsx } from './sheet-out/xlsx.ts';
export { type TagPaper, tagsPdf } from './tag-pdf/index.ts';
export type { Organisation } from './typeset/index.ts';
