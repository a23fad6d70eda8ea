import { type DBSchema, type IDBPDatabase, openDB } from 'idb';

/** Who this device is to its yard. The secret never leaves the device. */
export interface Identity {
  readonly secret: Uint8Array;
  readonly device: string;
  readonly name: string;
  readonly token: string;
  /** of the yard's log, to check what comes down */
  readonly log: string;
  readonly yard: string;
  readonly books: readonly string[];
}

interface Tables extends DBSchema {
  shelf: { key: string; value: Uint8Array };
  /** small things: the identity, settings, what PINs are checked by */
  kept: { key: string; value: unknown };
}
export type Database = IDBPDatabase<Tables>;

/** Real work and practice lie in two databases: nothing of one ever comes into the other. */
const DATABASES = { work: 'clampwright', practice: 'clampwright-practice' } as const;
export type World = keyof typeof DATABASES;

export const openDatabase = (world: World, onOlder: () => void = () => {}): Promise<Database> =>
  openDB<Tables>(DATABASES[world], 1, {
    upgrade(db) {
      db.createObjectStore('shelf');
      db.createObjectStore('kept');
    },
    blocking: onOlder,
  });

export const kept = async <T>(db: Database, key: string): Promise<T | undefined> => (await db.get('kept', key)) as T | undefined;

export async function keep(db: Database, key: string, value: unknown): Promise<void> {
  const change = db.transaction('kept', 'readwrite', { durability: 'strict' });
  await change.store.put(value, key);
  await change.done;
}
