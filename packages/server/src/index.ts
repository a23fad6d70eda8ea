/** A plan over HTTP, read only; and the books of a yard. */
export { appPages } from './app-pages.ts';
export { createApp } from './create-app.ts';
export { atDesk, entriesOf } from './log/desk.ts';
export { findYard, yardOf } from './log/log-key.ts';
export { auditBook, MOST_REPORTED, makeHandover, makeReport, reportSource } from './log/make-handover.ts';
export { openExport, openImport } from './log/open-export.ts';
export { BookDamaged, NeedsTls, type ServingBooks, serveBooks } from './log/serve-books.ts';
export { openStates } from './log/states.ts';
export { storeIsAway } from './log/store-is-away.ts';
export { type ServeOptions, type Serving, serve } from './serve.ts';
export { NamesNotOurs, type ServingYard, serveYard } from './yard-authority/serve-yard.ts';
