import { readdirSync } from 'node:fs';
import { join, sep } from 'node:path';
import { zipFolder } from '@clampwright/papers/edit';
import { serveFolder } from '@clampwright/server';
import { appOf } from './app-of.ts';
import { EXIT, refuse } from './exit.ts';
import { isFolder, jobFolder } from './job-folder.ts';

/** `clampwright show FOLDER`: opens the folder in the planner's app on this machine, until it is interrupted. The folder itself is not touched. */
export async function showCommand(folder: string, options: { readonly port: string }): Promise<number> {
  if (!isFolder(folder)) return refuse(`There is no folder ${folder}.`);
  const pages = appOf();
  if (!pages) return refuse('The app was not built. “npm run build” makes it.');
  const { url, close } = await serveFolder({ pages, archive: () => zipFolder(filesOf(folder)), port: Number(options.port) });
  process.stdout.write(`${folder} is open at ${url} (Ctrl-C ends)\n`);
  await new Promise<void>((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
  await close();
  return EXIT.fine;
}

/** The files of a job folder as they lie there now, without what was written from them, hidden files, and what leads out of it. */
function filesOf(folder: string): ReadonlyMap<string, Uint8Array> {
  const open = jobFolder(folder);
  const names = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() || entry.isSymbolicLink())
    .map((entry) => join(entry.parentPath, entry.name).slice(join(folder, sep).length))
    .filter((name) => !name.split(sep).some((part) => part.startsWith('.') || part === 'plan'));
  return new Map(
    names.flatMap((name) => {
      const bytes = open(name);
      return typeof bytes === 'string' ? [] : [[name.split(sep).join('/'), bytes] as const];
    }),
  );
}
