import { unzipFolder, withoutFolder } from '@clampwright/papers/edit';
import type { Files } from './draft.ts';

/** What people choose or drop: a job folder, as files or in an archive; a joint list; a building model. */
export type Taken =
  | { readonly kind: 'folder'; readonly name: string; readonly files: Files }
  | { readonly kind: 'list' | 'model'; readonly name: string; readonly bytes: Uint8Array }
  | { readonly kind: 'other' }
  /** not read, and why */
  | { readonly kind: 'unreadable'; readonly name: string }
  | { readonly kind: 'too large'; readonly name: string };

interface Named {
  /** with the folders it lies in */
  readonly path: string;
  readonly file: File;
}

/** Files that were chosen. */
export const chosen = (list: Iterable<File>): Named[] => [...list].map((file) => ({ path: file.webkitRelativePath || file.name, file }));

/** Files that were dropped, folders opened. */
export async function dropped(data: DataTransfer): Promise<Named[]> {
  const entries = [...data.items].flatMap((item) => item.webkitGetAsEntry() ?? []);
  return entries.length === 0 ? chosen(data.files) : (await Promise.all(entries.map((entry) => within(entry, '')))).flat();
}

async function within(entry: FileSystemEntry, folder: string): Promise<Named[]> {
  const path = `${folder}${entry.name}`;
  if (entry.isFile)
    return [{ path, file: await new Promise<File>((resolve, reject) => (entry as FileSystemFileEntry).file(resolve, reject)) }];
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const found: FileSystemEntry[] = [];
  // a reader gives a folder in pieces
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((resolve, reject) => reader.readEntries(resolve, reject));
    if (some.length === 0) break;
    found.push(...some);
  }
  return (await Promise.all(found.map((one) => within(one, `${path}/`)))).flat();
}

/** A file that was changed, moved or locked since it was chosen. */
class Unreadable extends Error {}
async function bytesOf(file: File): Promise<Uint8Array> {
  try {
    return new Uint8Array(await file.arrayBuffer());
  } catch {
    throw new Unreadable(file.name);
  }
}

/** The bytes of files that were chosen, or the name of the first that cannot be read. */
export async function bytesOfAll(list: Iterable<File>): Promise<readonly (readonly [string, Uint8Array])[] | string> {
  try {
    return await Promise.all([...list].map(async (file) => [file.name, await bytesOf(file)] as const));
  } catch (error) {
    if (error instanceof Unreadable) return error.message;
    throw error;
  }
}
const stem = (name: string) =>
  name
    .split('/')
    .at(-1)!
    .replace(/\.[^.]+$/, '');

/** What the files are, by their names and beginnings; nothing is read of them here. */
export async function takeFiles(named: readonly Named[]): Promise<Taken | undefined> {
  try {
    return await takeReadable(named);
  } catch (error) {
    if (error instanceof Unreadable) return { kind: 'unreadable', name: error.message };
    throw error;
  }
}

async function takeReadable(named: readonly Named[]): Promise<Taken | undefined> {
  const [first] = named;
  if (!first) return undefined;
  if (named.length === 1 && /\.zip$/i.test(first.path)) {
    const files = unzipFolder(await bytesOf(first.file));
    if (files === 'too large') return { kind: files, name: first.file.name };
    if (files !== 'no archive' && files.has('job.yaml')) return { kind: 'folder', name: stem(first.path), files };
  }
  if (named.some(({ path }) => /(^|\/)job\.yaml$/.test(path))) {
    const all = new Map(await Promise.all(named.map(async ({ path, file }) => [path, await bytesOf(file)] as const)));
    const folder = first.path.includes('/') ? first.path.split('/')[0]! : '';
    return { kind: 'folder', name: folder, files: inFolders(withoutFolder(all)) };
  }
  const bytes = await bytesOf(first.file);
  if (/\.ifc$/i.test(first.path)) return { kind: 'model', name: first.file.name, bytes };
  return /\.(csv|txt|tsv|xls|xlsx|xlsm)$/i.test(first.path) ? { kind: 'list', name: first.file.name, bytes } : { kind: 'other' };
}

/** Files that were chosen one by one have lost their folder: a chart is found again under the name that tools.yaml gives it. */
function inFolders(files: Files): Files {
  const tools = files.get('tools.yaml');
  if (!tools || [...files.keys()].some((name) => name.includes('/'))) return files;
  const text = new TextDecoder().decode(tools);
  const paths = [...text.matchAll(/[\w.-]+(?:\/[\w.-]+)+/g)].map(([path]) => path);
  return new Map([...files].map(([name, bytes]) => [paths.find((path) => path.split('/').at(-1) === name) ?? name, bytes]));
}
