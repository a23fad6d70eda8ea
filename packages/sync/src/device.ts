import {
  type BodyOf,
  canonicalBytes,
  deviceIdOf,
  EMPTY_FRONTIER,
  type Envelope,
  type Frontier,
  type Hash,
  hashOf,
  headBytes,
  isSignOff,
  type Json,
  type Kept,
  type KeyPair,
  type KindName,
  type Receipt,
  readEntry,
  readUtf8,
  receiptBytes,
  signHead,
  utf8,
  writeEntry,
} from '@clampwright/record';
import { keyOf } from './keys.ts';
import { linesOf } from './lines.ts';
import type { Row } from './page.ts';
import type { Shelf } from './shelf.ts';

/** What a device knows of its own chain in one book. */
export interface Chain {
  /** place of the next entry */
  readonly next: number;
  readonly previous?: Hash;
  /** highest counter known, of whatever device */
  readonly counter: number;
  /** heads of others that no entry of this device has named yet */
  readonly unseen: Readonly<Record<string, Hash>>;
  /** places below this one were acknowledged */
  readonly acknowledged: number;
}
const NEW_CHAIN: Chain = { next: 0, counter: 0, unseen: {}, acknowledged: 0 };

/** How far a device has read the log of one book, and what it needs to check that the log only grows. */
export interface Cursor extends Frontier {
  /** the last checkpoint it checked */
  readonly checkpoint?: string;
}

export interface DeviceOptions {
  readonly shelf: Shelf;
  readonly keys: KeyPair;
  /** the device's clock: evidence, whatever it shows */
  readonly now: () => Date;
  readonly offsetMinutes?: () => number;
}

export interface Device {
  readonly id: string;
  readonly keys: KeyPair;
  readonly shelf: Shelf;
  /** Writes an entry. When it resolves, the entry is on the shelf and in the outbox. */
  readonly append: <K extends KindName>(
    job: string,
    kind: K,
    body: BodyOf<K>,
    more?: { readonly by?: string; readonly paper?: { readonly done: string; readonly card: string } },
  ) => Promise<Kept>;
  /** Keeps a photo, plan or card, to be sent with the next sync; an entry names it by the hash. */
  readonly attach: (job: string, bytes: Uint8Array) => Promise<Hash>;
  /** A photo, plan or card that lies on this device. */
  readonly attachment: (job: string, hash: string) => Promise<Uint8Array | undefined>;
  /** Entries that are not yet in the log the server holds. */
  readonly outbox: (job: string) => Promise<readonly Kept[]>;
  /** What this device knows of a book: the log as far as read, from a place on, then its outbox. */
  readonly entries: (job: string, from?: number) => Promise<readonly Kept[]>;
  readonly chain: (job: string) => Promise<Chain>;
  readonly cursor: (job: string) => Promise<Cursor>;
  /** One change of a book at a time. */
  readonly alone: <T>(job: string, work: () => Promise<T>) => Promise<T>;
}

/** A device's side of every book it takes part in. */
export function openDevice({ shelf, keys, now, offsetMinutes = () => -now().getTimezoneOffset() }: DeviceOptions): Device {
  const id = deviceIdOf(keys.publicKey);
  const queues = new Map<string, Promise<unknown>>();
  const alone = <T>(job: string, work: () => Promise<T>): Promise<T> => {
    const turn = (queues.get(job) ?? Promise.resolve()).then(work, work);
    queues.set(
      job,
      turn.catch(() => undefined),
    );
    return turn;
  };
  const chain = async (job: string): Promise<Chain> => readJson(await shelf.get(keyOf.chain(job))) ?? NEW_CHAIN;
  const kept = async (prefix: string) => (await shelf.scan(prefix)).map(([, bytes]) => read(bytes));

  return {
    id,
    keys,
    shelf,
    alone,
    chain,
    cursor: async (job) => readCursor(await shelf.get(keyOf.cursor(job))),
    outbox: (job) => kept(keyOf.outbox(job)),
    attachment: (job, hash) => shelf.get(keyOf.attachment(job, hash)),
    entries: async (job, from = 0) => [...(await loggedFrom(shelf, job, from)), ...(await kept(keyOf.outbox(job)))],
    attach: async (job, bytes) => {
      const hash = hashOf(bytes);
      await shelf.write({
        put: [
          [keyOf.attachment(job, hash), bytes],
          [keyOf.unsentAttachment(job, hash), new Uint8Array(0)],
        ],
      });
      return hash;
    },
    append: (job, kind, body, more = {}) =>
      alone(job, async () => {
        const { next, previous, counter, unseen, acknowledged } = await chain(job);
        const heads = Object.values(unseen).slice(0, 256);
        const one = writeEntry(
          {
            job,
            device: id,
            sequence: next,
            counter: counter + 1,
            at: now().toISOString(),
            offsetMinutes: offsetMinutes(),
            ...(previous === undefined ? {} : { previous }),
            ...(heads.length === 0 ? {} : { seen: heads }),
            ...more,
          },
          kind,
          body,
        );
        const after: Chain = { next: next + 1, previous: one.hash, counter: counter + 1, unseen: {}, acknowledged };
        const signed = isSignOff(kind) ? [signHead({ job, device: id, sequence: next, hash: one.hash }, keys)] : [];
        await shelf.write({
          put: [
            [keyOf.waiting(job, next), one.bytes],
            [keyOf.chain(job), toJson(after)],
            ...signed.map((head) => [keyOf.signedHead(job, next), headBytes(head)] as const),
          ],
        });
        return one;
      }),
  };
}

/** An entry this device wrote or checked itself: unreadable bytes mean that the shelf is damaged. */
export function read(bytes: Uint8Array): Kept {
  const one = readEntry(bytes);
  if (!one.ok) throw new Error(`the device's storage is damaged: ${one.notices.map(({ code }) => code).join(', ')}`);
  return one.value;
}

export const toJson = (value: unknown): Uint8Array => utf8(JSON.stringify(value));
const readJson = <T>(bytes: Uint8Array | undefined): T | undefined =>
  bytes === undefined ? undefined : (JSON.parse(readUtf8(bytes)!) as T);

/** A stretch of the log as it lies on the shelf under the place of its first row: receipt and entry by turns, as they came. */
export const stretchBytes = (rows: readonly Row[]): Uint8Array =>
  linesOf(rows.flatMap(({ receipt, bytes }) => [receiptBytes(receipt), bytes]));

/**
 * The rows of a stretch. All of it was checked against the log's root when it came, before it was put there, so that a phone that opens a
 * long job reads only what it says.
 */
export function rowsOf(stretch: Uint8Array): { readonly index: number; readonly kept: Kept }[] {
  const text = readUtf8(stretch);
  if (text === undefined || !text.endsWith('\n')) throw new Error('the device’s storage is damaged: a stretch of the log is cut short');
  // canonical JSON holds no line feed, so that the lines of a stretch are read in one go
  const lines = JSON.parse(`[${text.slice(0, -1).replaceAll('\n', ',')}]`) as (Receipt | Envelope)[];
  return Array.from({ length: lines.length / 2 }, (_, at) => {
    const { index, entry: hash } = lines[2 * at] as Receipt;
    return { index, kept: new Stretched(hash, lines[2 * at + 1] as Envelope) };
  });
}

/** An entry as read from a stretch; its bytes are seldom asked for, and canonical JSON has one spelling. */
class Stretched implements Kept {
  constructor(
    readonly hash: Kept['hash'],
    readonly entry: Envelope,
  ) {}
  get bytes(): Uint8Array {
    return canonicalBytes(this.entry as unknown as Json);
  }
}

/** The log from a place on; a place inside a stretch has it read from its beginning. */
async function loggedFrom(shelf: Shelf, job: string, from: number): Promise<Kept[]> {
  const begins = from === 0 || (await shelf.get(keyOf.place(job, from))) !== undefined;
  const { size } = readCursor(await shelf.get(keyOf.cursor(job)));
  if (from >= size) return [];
  const stretches = await shelf.scan(keyOf.log(job), begins ? { from: keyOf.place(job, from) } : {});
  return stretches.flatMap(([, bytes]) => rowsOf(bytes)).flatMap(({ index, kept }) => (index < from ? [] : [kept]));
}

interface CursorText {
  readonly size: number;
  readonly roots: readonly (readonly number[])[];
  readonly checkpoint?: string;
}
export const cursorBytes = ({ size, roots, checkpoint }: Cursor): Uint8Array =>
  toJson({ size, roots: roots.map((root) => [...root]), ...(checkpoint === undefined ? {} : { checkpoint }) } satisfies CursorText);
function readCursor(bytes: Uint8Array | undefined): Cursor {
  const text = readJson<CursorText>(bytes);
  return text ? { ...text, roots: text.roots.map((root) => Uint8Array.from(root)) } : EMPTY_FRONTIER;
}
