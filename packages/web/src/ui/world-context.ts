import { createContext, useContext } from 'react';
import type { Book } from '../job/book.ts';
import { useWatched, watched } from '../job/store.ts';
import type { OpenWorld } from '../job/world.ts';

export interface WorldHere extends OpenWorld {
  /** who holds the device, as named with a PIN */
  readonly holder: string | undefined;
  readonly setHolder: (person: string | undefined) => void;
  /** the job in hand */
  readonly job: string | undefined;
  readonly setJob: (job: string) => void;
}

export const WorldContext = createContext<WorldHere | undefined>(undefined);
export const useWorld = (): WorldHere | undefined => useContext(WorldContext);

/** The book of the job in hand, where there is one. */
export function useBook(): Book | undefined {
  const world = useContext(WorldContext);
  const books = useWatched(world?.books ?? NONE);
  const book = books.find(({ job }) => job === world?.job) ?? books[0];
  useWatched(book?.version ?? NEVER);
  return book;
}

/** The yard's own book, where this device has it. */
export function useYard(): Book | undefined {
  const yard = useContext(WorldContext)?.yard;
  useWatched(yard?.version ?? NEVER);
  return yard;
}
const NONE = watched<readonly Book[]>([]);
const NEVER = watched(0);

/** The world and the job in hand; pages below it are shown only where there is one. */
export function useJob(): { readonly world: WorldHere; readonly book: Book } {
  const world = useContext(WorldContext);
  const book = useBook();
  if (!world || !book) throw new Error('a page of a job was shown without a job');
  return { world, book };
}
