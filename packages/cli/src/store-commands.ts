import { existsSync, readFileSync } from 'node:fs';
import { auditBook, makeHandover } from '@clampwright/server';
import { FolderTaken, fileSource, openStore, restoreBackup, type Store, type Where, writeBackup, writeFileWhole } from '@clampwright/store';
import { says } from '@clampwright/words';
import { EXIT, refuse } from './exit.ts';
import { type DataOption, whereOf, whereText } from './where-data-lies.ts';

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

const written = async (path: string, bytes: AsyncIterable<Uint8Array>): Promise<number> => {
  try {
    const size = await writeFileWhole(path, bytes);
    process.stdout.write(`${path}: ${size} bytes\n`);
    return EXIT.fine;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return refuse(`${path} is there already and is left as it is.`);
    throw error;
  }
};

/** `clampwright backup FILE`: everything of a store in one file, while the server runs. */
export const backupCommand = (file: string, options: DataOption): Promise<number> =>
  reading(whereOf(options), (store) => written(file, writeBackup(store, new Date())));

/** `clampwright handover JOB FILE`: one file that a stranger can verify. */
export const handoverCommand = (job: string, file: string, options: DataOption & { readonly report?: string }): Promise<number> =>
  reading(whereOf(options), async (store) => {
    if (!(await store.books()).some((book) => book.job === job))
      return refuse(`There is no book ${job}. Books: ${(await store.books()).map((book) => book.job).join(', ') || 'none'}.`);
    if (options.report !== undefined && !existsSync(options.report)) return refuse(`There is no file ${options.report}.`);
    const bytes = await makeHandover(store, job, new Date(), options.report === undefined ? undefined : readFileSync(options.report));
    return bytes ? written(file, bytes) : refuse('No server has opened this store yet, so it has no key to sign with.');
  });

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
