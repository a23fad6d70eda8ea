import type { Answered } from '@clampwright/sync';
import { useEffect, useState } from 'react';
import { type Listening, listen } from '../../../device/listen.ts';
import { type Book, openBook } from '../../../job/book.ts';
import { readerSource } from '../../../job/reader-book.ts';
import { useWatched, watched } from '../../../job/store.ts';
import { useBook, useWorld, type WorldHere } from '../../../ui/world-context.ts';
import { server } from './session.ts';

/** A job as this page has it. */
export interface ReadBook {
  readonly book: Book | undefined;
  /** this browser takes part in the job, and records for it */
  readonly world: WorldHere | undefined;
  /** jobs that a signed-in person may read, where the browser is no device of them */
  readonly jobs: Answered<'books'>['books'];
  readonly choose: (job: string) => void;
}

/** The job in hand: of this device, or, on any other browser, one of those that whoever is signed in may read. */
export function useReadBook(signedIn: boolean): ReadBook {
  const world = useWorld();
  const own = useBook();
  const [jobs, setJobs] = useState<ReadBook['jobs']>([]);
  const [job, choose] = useState<string>();
  const [read, setRead] = useState<Book>();
  const reads = own === undefined && signedIn;
  useEffect(() => {
    if (!reads) return;
    void server('books', {}).then((answer) => {
      if (answer.kind !== 'answered') return;
      const mine = answer.value.books.filter((one) => one.job.startsWith('j-') && one.size > 0);
      setJobs(mine);
      if (mine.length === 1) choose(mine[0]!.job);
    });
  }, [reads]);
  useEffect(() => {
    if (!reads || job === undefined) return undefined;
    let asked = true;
    setRead(undefined);
    void openBook(readerSource(server), job).then((book) => asked && setRead(book));
    return () => {
      asked = false;
    };
  }, [reads, job]);
  useWatched(read?.version ?? NEVER);
  return own ? { book: own, world, jobs: [], choose } : { book: reads ? read : undefined, world: undefined, jobs, choose };
}
const NEVER = watched(0);

/** Keeps a book up to date while the page is open, and says how. */
export function useLive({ book, world }: ReadBook): Listening {
  const [state, setState] = useState<Listening>('asking');
  const follow = world?.follow;
  const token = world?.identity.token;
  useEffect(() => {
    if (!book) return undefined;
    const stop = new AbortController();
    let size = -1;
    void listen(book.job, {
      token,
      signal: stop.signal,
      onState: setState,
      onGrown: (grown) => {
        if (grown <= size) return;
        if (Number.isFinite(grown)) size = grown;
        performance.mark('clampwright news');
        void (follow ? follow(book.job) : book.refresh());
      },
    });
    return () => stop.abort();
  }, [book, follow, token]);
  return state;
}
