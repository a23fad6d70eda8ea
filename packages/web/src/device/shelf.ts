import type { Shelf } from '@clampwright/sync';
import type { Database } from './database.ts';

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
    for (const [key, value] of put) void change.store.put(value, key);
    for (const one of remove) void change.store.delete(typeof one === 'string' ? one : IDBKeyRange.bound(one.from, one.to));
    await change.done;
  },
});
