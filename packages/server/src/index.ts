/** The app with a job folder to open, read only; and the books of a yard. */
export { appPages } from './app-pages.ts';
export { atDesk, entriesOf } from './log/desk.ts';
export { findYard, yardOf } from './log/log-key.ts';
export { auditBook, MOST_REPORTED, makeHandover, makeReport, reportSource } from './log/make-handover.ts';
export { openExport, openImport } from './log/open-export.ts';
export { BookDamaged, NeedsTls, type ServingBooks, serveBooks } from './log/serve-books.ts';
export { openStates } from './log/states.ts';
export { storeIsAway } from './log/store-is-away.ts';
export { serveFolder } from './serve-folder.ts';
export { NamesNotOurs, type ServingYard, serveYard } from './yard-authority/serve-yard.ts';
