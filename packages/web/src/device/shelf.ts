import type { Shelf } from '@clampwright/sync';
import { watched } from '../job/store.ts';
import type { Database } from './database.ts';

/** The last write did not come onto the disk: every page says so. */
export const shelfFull = watched(false);

/** Above every character that a key holds. */
const END = '\uffff';

/** A device's shelf in the browser's own database. What `write` has promised is on disk, not in a cache of the system. */
export const browserShelf = (db: Database): Shelf => ({
  get: (key) => db.get('shelf', key),
  scan: async (prefix, { from = prefix, limit } = {}) => {
    const range = IDBKeyRange.bound(from, prefix + END, false, true);
    const read = db.transaction('shelf', 'readonly').store;
    const [keys, values] = await Promise.all([read.getAllKeys(range, limit), read.getAll(range, limit)]);
    return keys.map((key, at) => [key, values[at]!] as const);
  },
  write: async ({ put = [], remove = [] }) => {
    const change = db.transaction('shelf', 'readwrite', { durability: 'strict' });
    try {
      await Promise.all([
        ...put.map(([key, value]) => change.store.put(value, key)),
        ...remove.map((one) => change.store.delete(typeof one === 'string' ? one : IDBKeyRange.bound(one.from, one.to))),
        change.done,
      ]);
      shelfFull.set(false);
    } catch (error) {
      shelfFull.set(true);
      throw error;
    }
  },
});
