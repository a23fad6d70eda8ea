import { createContext, useContext } from 'react';
import type { Book } from '../job/book.ts';
import { useWatched } from '../job/store.ts';
import type { OpenWorld } from '../job/world.ts';

export interface WorldHere extends OpenWorld {
  /** who holds the device, as named with a PIN */
  readonly holder: string | undefined;
  readonly setHolder: (person: string | undefined) => void;
}

export const WorldContext = createContext<WorldHere | undefined>(undefined);
export const useWorld = (): WorldHere | undefined => useContext(WorldContext);

/** The world and the job in hand; pages below it are shown only where there is one. */
export function useJob(): { readonly world: WorldHere; readonly book: Book } {
  const world = useContext(WorldContext);
  const book = world?.books[0];
  if (!world || !book) throw new Error('a page of a job was shown without a job');
  useWatched(book.version);
  return { world, book };
}
