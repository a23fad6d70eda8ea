/** Tells whoever listens that the log of a book has grown; what grew through another server is found by looking now and then. */
export function openLive(sizeOf: (job: string) => Promise<number>, { lookEveryMs = 2000 } = {}) {
  const listeners = new Map<string, Set<(size: number) => void>>();
  const told = new Map<string, number>();
  const tell = (job: string, size: number) => {
    if ((told.get(job) ?? -1) >= size) return;
    told.set(job, size);
    for (const listener of listeners.get(job) ?? []) listener(size);
  };
  const look = setInterval(() => {
    for (const job of listeners.keys())
      sizeOf(job).then(
        (size) => tell(job, size),
        () => {}, // the store is away: there is nothing to tell
      );
  }, lookEveryMs);
  look.unref();

  return {
    tell,
    count: () => [...listeners.values()].reduce((sum, { size }) => sum + size, 0),
    listen(job: string, listener: (size: number) => void): () => void {
      const own = listeners.get(job) ?? new Set();
      listeners.set(job, own.add(listener));
      return () => {
        own.delete(listener);
        if (own.size === 0) {
          listeners.delete(job);
          told.delete(job);
        }
      };
    },
    close: () => clearInterval(look),
  };
}
export type Live = ReturnType<typeof openLive>;
