import { existsSync, mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isOurs, isThere, writeOwn } from './own-files.ts';

/** A file that stands in the way and is not ours to replace. */
export class NotOurs extends Error {
  constructor(readonly path: string) {
    super(`${path} was not written by clampwright, or was changed since, and is left as it is`);
  }
}

/**
 * Writes files whole or not at all: to a temporary name first. Own output of before is replaced, anything else is refused before
 * a single file is written.
 */
export function writeOutput(folder: string, files: Readonly<Record<string, string | Uint8Array>>): void {
  if (existsSync(folder) && !statSync(folder).isDirectory()) throw new NotOurs(folder);
  mkdirSync(folder, { recursive: true });
  for (const name of Object.keys(files)) if (isThere(folder, name) && !isOurs(folder, name)) throw new NotOurs(join(folder, name));
  for (const [name, bytes] of Object.entries(files)) writeOwn(folder, name, bytes);
}
