import type { Notice } from '@clampwright/core';
import { keyPairOf, readNoteKey } from '@clampwright/record';
import {
  apiClient,
  type Client,
  type Device,
  fetchAttachments,
  httpTransport,
  openDevice,
  type PinCheck,
  syncBook,
} from '@clampwright/sync';
import { type Database, type Identity, keep, kept, type World } from '../device/database.ts';
import { browserShelf } from '../device/shelf.ts';
import { type Book, openBook } from './book.ts';
import { type Watched, watched } from './store.ts';

/** How the last sending went, in what a page can say. */
type SyncState =
  | { readonly kind: 'not yet' | 'syncing' | 'revoked' | 'misfit' }
  | { readonly kind: 'synced'; readonly at: Date }
  | { readonly kind: 'offline' }
  | { readonly kind: 'refused'; readonly notices: readonly Notice[] };

/** Everything this device takes part in. */
export interface OpenWorld {
  readonly world: World;
  readonly db: Database;
  readonly identity: Identity;
  readonly device: Device;
  readonly books: Watched<readonly Book[]>;
  /** the yard's own book: tools with their charts, batteries; practice has none */
  readonly yard: Book | undefined;
  readonly sync: Watched<SyncState>;
  readonly waiting: Watched<number>;
  /** minutes between this clock and the server's */
  readonly clockOff: Watched<number>;
  readonly send: () => Promise<void>;
  /** brings one book up to the server's log, and no more: for a page that watches it */
  readonly follow: (job: string) => Promise<void>;
  readonly pins: () => Promise<readonly PinCheck[]>;
}

/** Opens what lies on this device; undefined where it is enrolled nowhere. */
export async function openWorld(db: Database, world: World): Promise<OpenWorld | undefined> {
  const identity = await kept<Identity>(db, 'identity');
  if (!identity) return undefined;
  const device = openDevice({ shelf: browserShelf(db), keys: keyPairOf(identity.secret), now: () => new Date() });
  const books = watched<readonly Book[]>(await Promise.all(identity.books.map((job) => openBook(device, job))));
  const yard = identity.yard === '' ? undefined : await openBook(device, identity.yard);
  const all = () => [...books.get(), ...(yard ? [yard] : [])];
  for (const book of all()) book.version.subscribe(() => void count());
  const sync = watched<SyncState>({ kind: 'not yet' });
  const waiting = watched(0);
  const clockOff = watched(0);
  const count = async () => {
    let sum = 0;
    for (const { job } of all()) {
      const { next, acknowledged } = await device.chain(job);
      sum += next - acknowledged;
    }
    waiting.set(sum);
  };
  /** The planner may let this device take part in another job. */
  async function takeNewBooks(client: Client): Promise<void> {
    const answer = await client('books', {});
    if (answer.kind !== 'answered') return;
    const jobs = answer.value.books.map(({ job }) => job).filter((job) => job !== identity!.yard);
    const added = jobs.filter((job) => !books.get().some((book) => book.job === job));
    if (added.length === 0) return;
    const opened = await Promise.all(added.map((job) => openBook(device, job)));
    for (const book of opened) book.version.subscribe(() => void count());
    books.set([...books.get(), ...opened]);
    await keep(db, 'identity', { ...identity, books: books.get().map(({ job }) => job) });
  }
  await count();
  let running: Promise<void> | undefined;
  const send = () => {
    running ??= sendAll().finally(() => {
      running = undefined;
    });
    return running;
  };
  async function sendAll(): Promise<void> {
    if (world === 'practice') return;
    sync.set({ kind: 'syncing' });
    const { token, log } = identity!;
    const server = location.origin;
    const client = apiClient({ server, token });
    const logKey = readNoteKey(log);
    if (!logKey.ok) return;
    clockOff.set(await minutesOff(server).catch(() => clockOff.get()));
    await takeNewBooks(client);
    for (const book of all()) {
      const synced = await syncBook(device, book.job, httpTransport({ server, token }), logKey.value);
      await book.refresh();
      if (synced.stopped) {
        sync.set(stateOf(synced.stopped));
        await count();
        return;
      }
      const wanting = await fetchAttachments(device, book.job, book.attachments(), client);
      if (wanting.length < book.attachments().length) await book.refresh();
    }
    const pins = await client('pins', {});
    if (pins.kind === 'answered') await keep(db, 'pins', pins.value.pins);
    await count();
    sync.set({ kind: 'synced', at: new Date() });
  }
  /** one at a time: what comes while it runs is asked for after it */
  let following: Promise<void> = Promise.resolve();
  const follow = (job: string) => {
    following = following.then(async () => {
      const book = all().find((one) => one.job === job);
      const logKey = readNoteKey(identity.log);
      if (!book || !logKey.ok) return;
      const { token } = identity;
      await syncBook(device, job, httpTransport({ server: location.origin, token }), logKey.value);
      await book.refresh();
    });
    return following.catch(() => undefined);
  };
  return {
    world,
    db,
    identity,
    device,
    books,
    yard,
    sync,
    waiting,
    clockOff,
    send,
    follow,
    pins: async () => (await kept<PinCheck[]>(db, 'pins')) ?? [],
  };
}

function stateOf({ why, notices }: { readonly why: string; readonly notices: readonly Notice[] }): SyncState {
  if (why === 'unreachable') return { kind: 'offline' };
  if (why === 'log does not fit') return { kind: 'misfit' };
  return notices[0]?.code === 'not-signed-in' ? { kind: 'revoked' } : { kind: 'refused', notices };
}

async function minutesOff(server: string): Promise<number> {
  const answer = await fetch(`${server}/api/v1/health`, { cache: 'no-store' });
  const date = Date.parse(answer.headers.get('date') ?? '');
  return Number.isNaN(date) ? 0 : Math.round((Date.now() - date) / 60_000);
}
