import { cpSync, existsSync, mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { EXIT, refuse } from './exit.ts';
import { isFolder } from './job-folder.ts';

const TEMPLATES = fileURLToPath(new URL('../templates/', import.meta.url));

/** `clampwright init FOLDER`: a commented example to start from. Nothing that is there is overwritten. */
export function initCommand(folder: string, options: { readonly json?: boolean }): number {
  const files = readdirSync(TEMPLATES, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(TEMPLATES.length));
  if (existsSync(folder) && !isFolder(folder)) {
    return refuse(`Nothing was written: ${folder} is a file. Choose an empty folder.`);
  }
  const inTheWay = files.filter((file) => existsSync(join(folder, file)));
  if (inTheWay.length > 0) {
    return refuse(`Nothing was written: ${inTheWay.join(', ')} already in ${folder}. Choose an empty folder.`);
  }
  mkdirSync(folder, { recursive: true });
  cpSync(TEMPLATES, folder, { recursive: true, errorOnExist: true, force: false });
  if (options.json) process.stdout.write(`${JSON.stringify({ folder, files })}\n`);
  else process.stdout.write(`Written to ${folder}: ${files.join(', ')}\nNow: clampwright plan ${folder}\n`);
  return EXIT.fine;
}
