import { unzipSync, zipSync } from 'fflate';
import { LARGEST_FILE } from '../read/decode.ts';

/** A job folder has no more files, and no larger ones. */
const MOST_FILES = 2000;
/** Dates in a zip archive begin here; the same files give the same bytes. */
const EPOCH = new Date(1980, 0, 1);

/** The files of a job folder in one archive, for whoever goes on with it. */
export const zipFolder = (files: ReadonlyMap<string, Uint8Array>): Uint8Array =>
  zipSync(Object.fromEntries([...files].sort(([a], [b]) => (a < b ? -1 : 1))), { level: 6, mtime: EPOCH });

/** The files of an archive by their names, without the folder that all of them lie in; none of them where they unpack to more than a folder may hold. */
export function unzipFolder(bytes: Uint8Array): ReadonlyMap<string, Uint8Array> | 'too large' | 'no archive' {
  try {
    return fits(bytes) ? withoutFolder(new Map(Object.entries(unzipSync(bytes, { filter: ({ name }) => isFile(name) })))) : 'too large';
  } catch {
    return 'no archive';
  }
}

const isFile = (name: string): boolean => !name.endsWith('/') && !name.startsWith('__MACOSX/');

/** By its directory: nothing is unpacked yet. What a file is said to hold is all that is unpacked of it. */
function fits(bytes: Uint8Array): boolean {
  let [count, size] = [0, 0];
  unzipSync(bytes, {
    filter: ({ name, originalSize }) => {
      if (!isFile(name)) return false;
      count += 1;
      size += originalSize;
      return false;
    },
  });
  return count <= MOST_FILES && size <= 4 * LARGEST_FILE;
}

/** Files are named from the folder in which job.yaml lies. */
export function withoutFolder(files: ReadonlyMap<string, Uint8Array>): ReadonlyMap<string, Uint8Array> {
  const job = [...files.keys()].filter((name) => /(^|\/)job\.yaml$/.test(name)).sort((a, b) => a.length - b.length)[0];
  const folder = job?.slice(0, -'job.yaml'.length) ?? '';
  return new Map([...files].flatMap(([name, bytes]) => (name.startsWith(folder) ? [[name.slice(folder.length), bytes] as const] : [])));
}
