import { existsSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { isAbsolute, join, relative, sep } from 'node:path';
import { LARGEST_FILE, type OpenFile } from '@clampwright/papers';

/** Opens files of a job folder; a path or a link that leads out of it is not followed. */
export function jobFolder(folder: string): OpenFile {
  const root = realpathSync(folder);
  return (path) => {
    const full = join(root, path);
    if (leaves(root, full)) return 'outside';
    if (!existsSync(full) || !statSync(full).isFile()) return 'missing';
    const real = realpathSync(full);
    if (leaves(root, real)) return 'outside';
    return statSync(real).size > LARGEST_FILE ? 'too large' : readFileSync(real);
  };
}

function leaves(root: string, path: string): boolean {
  const way = relative(root, path);
  return way === '..' || way.startsWith(`..${sep}`) || isAbsolute(way);
}

export const isFolder = (path: string): boolean => existsSync(path) && statSync(path).isDirectory();
export const isFile = (path: string): boolean => existsSync(path) && statSync(path).isFile();
