import { useEffect } from 'react';
import type { OpenWorld } from '../job/world.ts';

const EVERY_MS = 60_000;
/** As long as no joint has come: whoever joins while the planner still sends stands there and waits. */
const FIRST_MS = 5000;
const SOON_MS = 1500;

/** Sends when the app opens, when the network comes back, soon after something was recorded, and every minute; more often until the first joint has come. */
export function useSending(world: OpenWorld): void {
  useEffect(() => {
    const send = () => void world.send().catch(() => undefined);
    send();
    let soon: ReturnType<typeof setTimeout> | undefined;
    const forget = world.waiting.subscribe(() => {
      if (world.waiting.get() === 0 || soon !== undefined) return;
      soon = setTimeout(() => {
        soon = undefined;
        send();
      }, SOON_MS);
    });
    const hasJoints = () => world.books.get().some((book) => book.fold.ids('joint').length > 0);
    let every: ReturnType<typeof setTimeout>;
    const wait = () => {
      every = setTimeout(
        () => {
          send();
          wait();
        },
        hasJoints() ? EVERY_MS : FIRST_MS,
      );
    };
    wait();
    addEventListener('online', send);
    return () => {
      forget();
      clearTimeout(every);
      clearTimeout(soon);
      removeEventListener('online', send);
    };
  }, [world]);
}
