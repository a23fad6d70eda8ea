import { FolderTaken, openStore, type Store } from '@clampwright/store';
import { EXIT, refuse } from './exit.ts';
import { type DataOption, whereOf } from './where-data-lies.ts';

export interface DeskOptions extends DataOption {
  readonly write?: boolean;
}

/** Opens the books at the desk: to be read only, unless they are to be written. */
export async function atBooks(options: DeskOptions, work: (store: Store) => Promise<number>): Promise<number> {
  let store: Store;
  try {
    store = await openStore(whereOf(options), options.write ? {} : { mode: 'reader' });
  } catch (error) {
    if (error instanceof FolderTaken) return refuse(`${error.message}. Stop the server while papers are entered.`);
    throw error;
  }
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** Says that nothing was written yet, and how it is. */
export function onlyShown(what: string): number {
  process.stdout.write(
    `Nothing is entered yet. If this is ${what}, the same command with --write enters it; it cannot be taken back, only corrected.\n`,
  );
  return EXIT.fine;
}
