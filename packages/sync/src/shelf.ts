/**
 * Where a device keeps what it holds: bytes under keys, in key order. A write is whole or not at all, and durable when it resolves.
 * Implemented over memory here, over IndexedDB in the app.
 */
export interface Shelf {
  readonly get: (key: string) => Promise<Uint8Array | undefined>;
  /** keys that begin with `prefix`, from `from` on, in order */
  readonly scan: (prefix: string, options?: { readonly from?: string; readonly limit?: number }) => Promise<readonly Kept[]>;
  readonly write: (change: { readonly put?: readonly Kept[]; readonly remove?: readonly (string | KeyRange)[] }) => Promise<void>;
}
type Kept = readonly [key: string, value: Uint8Array];
/** Every key from one to another, both among them. */
export interface KeyRange {
  readonly from: string;
  readonly to: string;
}

/** A shelf that lasts as long as the process: for tests and simulated days. `copy` is a phone restored from a backup of this one. */
export function memoryShelf(
  from: ReadonlyMap<string, Uint8Array> = new Map(),
): Shelf & { readonly copy: () => ReadonlyMap<string, Uint8Array> } {
  const kept = new Map(from);
  let keys: string[] | undefined;
  const sorted = () => {
    keys ??= [...kept.keys()].sort();
    return keys;
  };
  const placeOf = (key: string) => {
    const all = sorted();
    let [low, high] = [0, all.length];
    while (low < high) {
      const middle = (low + high) >>> 1;
      if (all[middle]! < key) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  return {
    copy: () => new Map(kept),
    get: async (key) => kept.get(key),
    scan: async (prefix, { from: first = prefix, limit = Number.POSITIVE_INFINITY } = {}) => {
      const found: Kept[] = [];
      const all = sorted();
      for (let at = placeOf(first); at < all.length && found.length < limit; at += 1) {
        if (!all[at]!.startsWith(prefix)) break;
        found.push([all[at]!, kept.get(all[at]!)!]);
      }
      return found;
    },
    write: async ({ put = [], remove = [] }) => {
      for (const [key, value] of put) {
        if (!kept.has(key)) {
          const last = keys?.at(-1);
          if (keys && (last === undefined || last < key)) keys.push(key);
          else keys = undefined;
        }
        kept.set(key, value);
      }
      for (const one of remove) {
        const gone = typeof one === 'string' ? [one] : [...kept.keys()].filter((key) => key >= one.from && key <= one.to);
        for (const key of gone) if (kept.delete(key)) keys = undefined;
      }
    },
  };
}
