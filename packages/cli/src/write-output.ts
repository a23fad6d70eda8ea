import { existsSync, mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** Everything the product writes carries this word near its beginning, so that it knows its own files again. */
const OWN_MARK = 'clampwright-';

/** A file that stands in the way and is not ours to replace. */
export class NotOurs extends Error {
  constructor(readonly path: string) {
    super(`${path} is there already and is left as it is`);
  }
}

/**
 * Writes files whole or not at all: to a temporary name first. Own output of before is replaced, anything else is refused before
 * a single file is written.
 */
export function writeOutput(folder: string, files: Readonly<Record<string, string>>): void {
  if (existsSync(folder) && !statSync(folder).isDirectory()) throw new NotOurs(folder);
  mkdirSync(folder, { recursive: true });
  for (const name of Object.keys(files)) {
    const path = join(folder, name);
    if (existsSync(path) && !isOurs(path)) throw new NotOurs(path);
  }
  for (const [name, text] of Object.entries(files)) {
    const path = join(folder, name);
    const part = `${path}.${process.pid}.part`;
    writeFileSync(part, text, { flag: 'wx' });
    renameSync(part, path);
  }
}

/** Writes one file under a name that is free; what is there is left as it is. Returns the name. */
export function writeNew(path: string, bytes: Uint8Array): string {
  if (existsSync(path)) throw new NotOurs(path);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, bytes, { flag: 'wx' });
  return path;
}

const isOurs = (path: string) => statSync(path).isFile() && readFileSync(path, 'utf8').slice(0, 400).includes(OWN_MARK);
