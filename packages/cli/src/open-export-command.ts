import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { openExport, openImport } from '@clampwright/server';
import { FolderTaken, openStore, type Store } from '@clampwright/store';
import { EXIT, refuse } from './exit.ts';
import { isFile, isFolder } from './job-folder.ts';
import { faultsText } from './plan-text.ts';
import { reading } from './store-commands.ts';
import { type DataOption, whereOf, whereText } from './where-data-lies.ts';

interface ExportOptions extends DataOption {
  readonly out: string;
}

/** `clampwright export-book JOB --out FOLDER`: the folder appears whole, or not at all. */
export const openExportCommand = (job: string, options: ExportOptions): Promise<number> =>
  reading(whereOf(options), async (store) => {
    const books = (await store.books()).map((book) => book.job);
    if (!books.includes(job)) return refuse(`There is no book ${job}. Books: ${books.join(', ') || 'none'}.`);
    if (existsSync(options.out)) return refuse(`${options.out} is there already and is left as it is. Choose a new folder.`);
    return writeOpen(store, job, options.out);
  });

async function writeOpen(store: Store, job: string, out: string): Promise<number> {
  const part = `${out}.${process.pid}.part`;
  let [files, size] = [0, 0];
  for await (const { path, bytes } of openExport(store, job)) {
    mkdirSync(dirname(join(part, path)), { recursive: true });
    writeFileSync(join(part, path), bytes, { flag: 'wx' });
    files += 1;
    size += bytes.length;
  }
  renameSync(part, out);
  process.stdout.write(`${out}: ${files} files, ${size} bytes\n`);
  return EXIT.fine;
}

/** `clampwright import-book FOLDER`: an open export into a store that does not hold its books. */
export async function openImportCommand(folder: string, options: DataOption): Promise<number> {
  if (!isFolder(folder)) return refuse(`There is no folder ${folder}.`);
  const where = whereOf(options);
  let store: Store;
  try {
    store = await openStore(where);
  } catch (error) {
    if (error instanceof FolderTaken) return refuse(`${error.message}.`);
    throw error;
  }
  try {
    const taken = await openImport(store, async (path) => {
      const inside = !path.split(/[\\/]/).includes('..') && isFile(join(folder, path));
      return inside ? new Uint8Array(readFileSync(join(folder, path))) : undefined;
    });
    if (!taken.ok) return refuse(`Not taken over.\n${faultsText(taken.notices, 'metric')}`);
    process.stdout.write(
      `${taken.value.map(({ job, size }) => `${job}: ${size} entries, whole`).join('\n')}\nTaken over to ${whereText(where)} and read again.\n`,
    );
    return EXIT.fine;
  } finally {
    await store.close();
  }
}
