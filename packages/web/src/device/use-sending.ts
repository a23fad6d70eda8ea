import { useEffect } from 'react';
import type { OpenWorld } from '../job/world.ts';

const EVERY_MS = 60_000;
const SOON_MS = 1500;

/** Sends when the app opens, when the network comes back, soon after something was recorded, and every minute. */
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
    const every = setInterval(send, EVERY_MS);
    addEventListener('online', send);
    return () => {
      forget();
      clearInterval(every);
      clearTimeout(soon);
      removeEventListener('online', send);
    };
  }, [world]);
}
