/**
 * Where the log lies: append-only, SQLite in a folder or PostgreSQL at an address, behind one interface. Nothing here changes or
 * removes an entry. Start at `openStore`.
 */
export { type BookCheck, checkBook, checkEnd } from './check-book.ts';
export { FolderTaken, type Where } from './connect.ts';
export { openStore, type Row, type Store } from './store.ts';
