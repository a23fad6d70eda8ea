/**
 * Where the log lies: append-only, SQLite in a folder or PostgreSQL at an address, behind one interface. Nothing here changes or
 * removes an entry. Start at `openStore`.
 */

export { writeBackup } from './backup.ts';
export { type BookCheck, checkBook, checkEnd, type KnownKeys } from './check-book.ts';
export { FolderTaken, type Where } from './connect.ts';
export { fileSource } from './file-source.ts';
export { handoverSource, KeyMissing } from './handover-source.ts';
export { once } from './once.ts';
export { type RestoreOutcome, restoreBackup } from './restore.ts';
export { openStore, type Row, type Store } from './store.ts';
export { writeFileWhole } from './write-file.ts';
