import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Draft, DraftHead, Files } from './draft.ts';

interface Tables extends DBSchema {
  heads: { key: string; value: DraftHead };
  files: { key: string; value: Files };
}

let opened: Promise<IDBPDatabase<Tables>> | undefined;
const database = (): Promise<IDBPDatabase<Tables>> => {
  opened ??= openDB<Tables>('clampwright-drafts', 1, {
    upgrade(db) {
      db.createObjectStore('heads', { keyPath: 'id' });
      db.createObjectStore('files');
    },
  });
  return opened;
};

/** Every draft of this browser, the last changed first. */
export const draftHeads = async (): Promise<readonly DraftHead[]> =>
  (await (await database()).getAll('heads')).sort((a, b) => (a.changed < b.changed ? 1 : -1));

export async function readDraft(id: string): Promise<Draft | undefined> {
  const db = await database();
  const [head, files] = await Promise.all([db.get('heads', id), db.get('files', id)]);
  return head && files ? { ...head, files } : undefined;
}

/** A file of this name of every draft that has one, the last changed last. */
export async function everyFile(name: string): Promise<readonly Uint8Array[]> {
  const db = await database();
  const all = await Promise.all((await draftHeads()).toReversed().map(({ id }) => db.get('files', id)));
  return all.flatMap((files) => files?.get(name) ?? []);
}

export async function keepDraft({ files, ...head }: Draft): Promise<void> {
  const change = (await database()).transaction(['heads', 'files'], 'readwrite');
  await Promise.all([change.objectStore('heads').put(head), change.objectStore('files').put(files, head.id), change.done]);
}

export async function forgetDraft(id: string): Promise<void> {
  const change = (await database()).transaction(['heads', 'files'], 'readwrite');
  await Promise.all([change.objectStore('heads').delete(id), change.objectStore('files').delete(id), change.done]);
}
