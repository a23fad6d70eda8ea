import { existsSync } from 'node:fs';
import { auditBook } from '@clampwright/server';
import { FolderTaken, fileSource, openStore, restoreBackup, type Store, type Where, writeBackup } from '@clampwright/store';
import { says } from '@clampwright/words';
import { EXIT, refuse } from './exit.ts';
import { type DataOption, whereOf, whereText } from './where-data-lies.ts';
import { written } from './written.ts';

/** Opens the books beside a server that may be running. */
export async function reading(where: Where, work: (store: Store) => Promise<number>): Promise<number> {
  if ('folder' in where && !existsSync(where.folder)) return refuse(`There is no folder ${where.folder}.`);
  const store = await openStore(where, { mode: 'reader' });
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** `clampwright backup FILE`: everything of a store in one file, while the server runs. */
export const backupCommand = (file: string, options: DataOption): Promise<number> =>
  reading(whereOf(options), (store) => written(file, writeBackup(store, new Date())));

/** `clampwright audit`: reads every entry of every book again and holds it against chain and tree. */
export const auditCommand = (options: DataOption): Promise<number> =>
  reading(whereOf(options), async (store) => {
    let faults = 0;
    for (const { job } of await store.books()) {
      const { size, fault } = await auditBook(store, job);
      if (fault !== undefined) faults += 1;
      process.stdout.write(`${job}: ${size} entries, ${fault ?? 'whole'}\n`);
    }
    return faults === 0 ? EXIT.fine : EXIT.stops;
  });

/** `clampwright restore FILE`: a backup into an empty store, read again and compared. */
export async function restoreCommand(file: string, options: DataOption): Promise<number> {
  if (!existsSync(file)) return refuse(`There is no file ${file}.`);
  const where = whereOf(options);
  try {
    const store = await openStore(where);
    const source = await fileSource(file);
    try {
      const restored = await restoreBackup(store, source);
      if (!restored.ok)
        return refuse(`Not restored: ${restored.fault ? `byte ${restored.fault.byte}: ${says(restored.fault.reason)}` : restored.why}.`);
      process.stdout.write(
        `${restored.value.books.map(({ job, size }) => `${job}: ${size} entries, whole`).join('\n')}\nRestored to ${whereText(where)} and read again.\n`,
      );
      return EXIT.fine;
    } finally {
      await source.close();
      await store.close();
    }
  } catch (error) {
    if (error instanceof FolderTaken) return refuse(`${error.message}.`);
    throw error;
  }
}
