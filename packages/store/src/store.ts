import {
  EMPTY_FRONTIER,
  type Frontier,
  grow,
  type Hash,
  headBytes,
  type Kept,
  leafHash,
  nodeHash,
  type Receipt,
  readEntry,
  readHead,
  receiptBytes,
  type SignedHead,
} from '@clampwright/record';
import { type Kysely, sql, type Transaction } from 'kysely';
import { type AccessRecords, accessRecords } from './access-records.ts';
import { type Attachments, attachmentsOf } from './attachments.ts';
import { type Connected, connect, type Mode, type Where } from './connect.ts';
import type { Engine } from './engine.ts';
import { frontierBytes, readFrontier } from './frontier-bytes.ts';
import { openProofs, type Proofs, RUN } from './proofs.ts';
import { retrying } from './retrying.ts';
import type { Tables } from './tables.ts';

export interface Row {
  readonly receipt: Receipt;
  readonly bytes: Uint8Array;
}

/** The books of a yard and of its jobs. What was appended is never changed and never removed; there is no way to ask for it. */
export interface Store extends Proofs {
  readonly engine: Engine;
  readonly append: (job: string, entries: readonly Kept[], heads: readonly SignedHead[]) => Promise<readonly Receipt[]>;
  /** Puts back what a backup holds, with its places and times of arrival. */
  readonly restore: (job: string, rows: readonly Row[], heads: readonly SignedHead[]) => Promise<void>;
  readonly counterOf: (job: string, device: string, sequence: number, hash: Hash) => Promise<number | undefined>;
  readonly placeOf: (job: string, hash: string) => Promise<number | undefined>;
  /** devices that wrote into a book */
  readonly devices: (job: string) => Promise<readonly string[]>;
  readonly checkpoints: (job: string) => Promise<readonly { readonly size: number; readonly note: string }[]>;
  readonly books: () => Promise<readonly { readonly job: string; readonly size: number }[]>;
  readonly tail: (job: string) => Promise<Frontier>;
  /** receipts and entries from a place on, in the order of arrival */
  readonly rows: (job: string, from: number, limit: number) => Promise<readonly Row[]>;
  readonly heads: (job: string) => Promise<readonly SignedHead[]>;
  readonly putCheckpoint: (job: string, size: number, note: string) => Promise<void>;
  readonly checkpoint: (job: string, size: number) => Promise<string | undefined>;
  readonly attachments: Attachments;
  readonly access: AccessRecords;
  readonly ping: () => Promise<void>;
  readonly close: () => Promise<void>;
}

export interface StoreOptions {
  readonly mode?: Mode;
  readonly now?: () => Date;
}

export async function openStore(where: Where, { mode = 'server', now = () => new Date() }: StoreOptions = {}): Promise<Store> {
  return storeOver(await connect(where, mode), now);
}

function storeOver(connected: Connected, now: () => Date): Store {
  const { engine, db, close } = connected;
  const write = <T>(work: (transaction: Transaction<Tables>) => Promise<T>) => retrying(() => immediate(db, engine, work));
  return {
    engine,
    close,
    append: (job, entries, heads) => write((transaction) => appendIn(transaction, connected, job, entries, heads, clockOf(now))),
    restore: (job, rows, heads) =>
      write(async (transaction) => {
        const entries = rows.map(({ bytes }) => readable(bytes));
        let at = 0;
        const receipts = await appendIn(transaction, connected, job, entries, heads, () => rows[at++]!.receipt.arrived);
        const wrong = receipts.findIndex(
          (receipt, i) => receipt.index !== rows[i]!.receipt.index || receipt.arrived !== rows[i]!.receipt.arrived,
        );
        if (wrong >= 0) throw new Error(`entry ${rows[wrong]!.receipt.index} of ${job} does not come back to its place`);
      }),
    placeOf: async (job, hash) =>
      (await db.selectFrom('entry').select('place').where('job', '=', job).where('hash', '=', Buffer.from(hash, 'hex')).executeTakeFirst())
        ?.place,
    devices: async (job) =>
      (await db.selectFrom('entry').select('device').distinct().where('job', '=', job).orderBy('device').execute()).map(
        ({ device }) => device,
      ),
    checkpoints: (job) => db.selectFrom('checkpoint').select(['size', 'note']).where('job', '=', job).orderBy('size').execute(),
    counterOf: async (job, device, sequence, hash) => {
      const row = await db
        .selectFrom('entry')
        .select(['device', 'sequence', 'counter'])
        .where('job', '=', job)
        .where('hash', '=', Buffer.from(hash, 'hex'))
        .executeTakeFirst();
      return row?.device === device && row.sequence === sequence ? row.counter : undefined;
    },
    books: () => db.selectFrom('tail').select(['job', 'size']).where('size', '>', 0).orderBy('job').execute(),
    tail: async (job) => {
      const row = await db.selectFrom('tail').selectAll().where('job', '=', job).executeTakeFirst();
      return row ? readFrontier(row.size, row.frontier) : EMPTY_FRONTIER;
    },
    rows: async (job, from, limit) => {
      const rows = await db
        .selectFrom('entry')
        .select(['place', 'hash', 'arrived', 'bytes'])
        .where('job', '=', job)
        .where('place', '>=', from)
        .where('place', '<', from + limit)
        .orderBy('place')
        .execute();
      return rows.map(({ place, hash, arrived, bytes }) => ({
        receipt: { job, index: place, entry: hash.toString('hex'), arrived } as Receipt,
        bytes: plain(bytes),
      }));
    },
    heads: async (job) => {
      const rows = await db
        .selectFrom('head')
        .select('bytes')
        .where('job', '=', job)
        .orderBy('device')
        .orderBy('sequence')
        .orderBy('hash')
        .execute();
      return rows.map(({ bytes }) => {
        const head = readHead(plain(bytes));
        if (!head.ok) throw new Error('a signed head in the store cannot be read');
        return head.value;
      });
    },
    putCheckpoint: async (job, size, note) => {
      await db
        .insertInto('checkpoint')
        .values({ job, size, note })
        .onConflict((conflict) => conflict.columns(['job', 'size']).doNothing())
        .execute();
    },
    checkpoint: async (job, size) =>
      (await db.selectFrom('checkpoint').select('note').where('job', '=', job).where('size', '=', size).executeTakeFirst())?.note,
    attachments: attachmentsOf(db),
    access: accessRecords(db),
    ...openProofs(db),
    ping: async () => {
      await sql`select 1`.execute(db);
    },
  };
}

/** The time of one batch; never before the last that was given out, whatever the server's clock does. */
function clockOf(now: () => Date): (last: string) => string {
  const clock = now().toISOString();
  return (last) => {
    if (last > clock) return last;
    return clock;
  };
}

function readable(bytes: Uint8Array): Kept {
  const kept = readEntry(bytes);
  if (!kept.ok) throw new Error('an entry cannot be read');
  return kept.value;
}

/** Buffers of a driver may share memory: what leaves the store is its own bytes. */
const plain = (bytes: Uint8Array) => new Uint8Array(bytes);

/** A transaction that may write from its first moment on: two of them wait for each other instead of failing at commit. */
function immediate<T>(db: Kysely<Tables>, engine: Engine, work: (transaction: Transaction<Tables>) => Promise<T>): Promise<T> {
  if (engine === 'postgres') return db.transaction().execute(work);
  return db.connection().execute(async (connection) => {
    await sql`begin immediate`.execute(connection);
    try {
      const result = await work(connection as Transaction<Tables>);
      await sql`commit`.execute(connection);
      return result;
    } catch (error) {
      // a full disk has already rolled back by itself
      await sql`rollback`.execute(connection).catch(() => undefined);
      throw error;
    }
  });
}

async function appendIn(
  db: Transaction<Tables>,
  { engine, hot }: Pick<Connected, 'engine' | 'hot'>,
  job: string,
  entries: readonly Kept[],
  heads: readonly SignedHead[],
  arrivedAfter: (last: string) => string,
): Promise<readonly Receipt[]> {
  // On PostgreSQL the row of the tail is the lock of the book: whoever holds it gives out places.
  const lock = () => {
    const row = db.selectFrom('tail').selectAll().where('job', '=', job);
    return (engine === 'postgres' ? row.forUpdate() : row).executeTakeFirst();
  };
  let tail = await lock();
  if (!tail && engine === 'postgres') {
    await db
      .insertInto('tail')
      .values({ job, size: 0, arrived: '', frontier: Buffer.alloc(0) })
      .onConflict((conflict) => conflict.column('job').doNothing())
      .execute();
    tail = await lock();
  }
  const hashes = entries.map(({ hash }) => Buffer.from(hash, 'hex'));
  const before = entries.length === 0 ? [] : await hot.known(db, job, hashes);
  const known = new Map(
    before.map(({ hash, place, arrived: then }) => {
      const entry = hash.toString('hex') as Hash;
      return [entry, { job, index: place, entry, arrived: then } satisfies Receipt];
    }),
  );
  let arrived = tail?.arrived ?? '';
  let frontier = tail ? readFrontier(tail.size, tail.frontier) : EMPTY_FRONTIER;
  const fresh: (Tables['entry'] & { hash: Buffer })[] = [];
  const runs: Tables['subtree'][] = [];
  const receipts = entries.map(({ hash, bytes, entry }, at): Receipt => {
    const there = known.get(hash);
    if (there) return there;
    arrived = arrivedAfter(arrived);
    const receipt: Receipt = { job, index: frontier.size, entry: hash, arrived };
    known.set(hash, receipt);
    const leaf = leafHash(receiptBytes(receipt));
    if ((frontier.size + 1) % RUN === 0) runs.push({ job, run: (frontier.size + 1) / RUN - 1, hash: Buffer.from(runRoot(frontier, leaf)) });
    frontier = grow(frontier, leaf);
    fresh.push({
      job,
      place: receipt.index,
      hash: hashes[at]!,
      device: entry.device,
      sequence: entry.sequence,
      counter: entry.counter,
      arrived,
      bytes: Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length),
    });
    return receipt;
  });
  await hot.insert(db, fresh);
  if (runs.length > 0) await db.insertInto('subtree').values(runs).execute();
  if (heads.length > 0)
    await db
      .insertInto('head')
      .values(
        heads.map((head) => ({
          job,
          device: head.device,
          sequence: head.sequence,
          hash: Buffer.from(head.hash, 'hex'),
          bytes: Buffer.from(headBytes(head)),
        })),
      )
      .onConflict((conflict) => conflict.columns(['job', 'device', 'sequence', 'hash']).doNothing())
      .execute();
  if (fresh.length > 0) {
    const after = { size: frontier.size, arrived, frontier: frontierBytes(frontier) };
    await db
      .insertInto('tail')
      .values({ job, ...after })
      .onConflict((conflict) => conflict.column('job').doUpdateSet(after))
      .execute();
  }
  return receipts;
}

/** Root of the run of 256 leaves that `leaf` makes whole: before it stand subtrees of 128, 64 … 1 leaves, in that order. */
const runRoot = ({ roots }: Frontier, leaf: Uint8Array): Uint8Array =>
  roots.slice(-Math.log2(RUN)).reduceRight((right, left) => nodeHash(left, right), leaf);
