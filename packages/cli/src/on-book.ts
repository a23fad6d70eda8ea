import type { Store } from '@clampwright/store';
import { refuse } from './exit.ts';
import { reading } from './store-commands.ts';
import { type DataOption, whereOf } from './where-data-lies.ts';

export const NO_KEY = 'No server has opened this store yet, so it has no key to sign with.';

/** Works on one book of the store; says which there are where it is not one of them. */
export const onBook = (job: string, options: DataOption, work: (store: Store) => Promise<number>): Promise<number> =>
  reading(whereOf(options), async (store) => {
    const books = await store.books();
    if (books.some((book) => book.job === job)) return work(store);
    return refuse(`There is no book ${job}. Books: ${books.map((book) => book.job).join(', ') || 'none'}.`);
  });
