import { useSyncExternalStore } from 'react';

/** A value that pages watch. */
export interface Watched<T> {
  readonly get: () => T;
  readonly set: (value: T) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

export function watched<T>(first: T): Watched<T> {
  let value = first;
  const listeners = new Set<() => void>();
  return {
    get: () => value,
    set: (next) => {
      value = next;
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

export const useWatched = <T>({ get, subscribe }: Watched<T>): T => useSyncExternalStore(subscribe, get);
