import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import pg from 'pg';
import type { Kept } from '../packages/record/src/index.ts';
import { jointId, TEST_JOB, testWriter } from '../packages/record/src/test-book.ts';
import { openStore, type Where } from '../packages/store/src/index.ts';
import { testDatabase } from '../packages/store/src/test-database.ts';

const BATCH = 100;
const BATCHES = 100;

const batchesOf = (n: number): Kept[][] => {
  const writer = testWriter(n);
  return Array.from({ length: BATCHES }, () =>
    Array.from({ length: BATCH }, (_, i) =>
      writer.write('bolt-tightened', { joint: jointId(1), bolt: i + 1, step: 'second step', tool: 'SK-1', setting: '2/4', end: 'stall' }),
    ),
  );
};

const SHAPE = (int: string, bytes: string) =>
  `(job text not null, place ${int} not null, hash ${bytes} not null, device text not null, sequence ${int} not null, counter ${int} not null, arrived text not null, bytes ${bytes} not null, primary key (job, place))`;
const rowOf = ({ hash, bytes, entry }: Kept, place: number) => [
  entry.job,
  place,
  Buffer.from(hash, 'hex'),
  entry.device,
  entry.sequence,
  entry.counter,
  entry.at,
  Buffer.from(bytes),
];

/** Rows of the same columns and indexes, inserted by the driver alone: each batch one durable transaction. */
function bareSqlite(folder: string): (batch: readonly Kept[], at: number) => void {
  const file = new Database(join(folder, 'bare.sqlite'));
  file.pragma('journal_mode = WAL');
  file.pragma('synchronous = FULL');
  file.exec(`create table entry ${SHAPE('integer', 'blob')} strict, without rowid; create unique index by_hash on entry (job, hash)`);
  const insert = file.prepare('insert into entry values (?, ?, ?, ?, ?, ?, ?, ?)');
  return file.transaction((batch: readonly Kept[], at: number) => {
    batch.forEach((one, i) => {
      insert.run(...rowOf(one, at + i));
    });
  });
}

async function barePostgres(url: string) {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  await client.query(`create table bare ${SHAPE('bigint', 'bytea')}; create unique index bare_by_hash on bare (job, hash)`);
  const text = `insert into bare values ${Array.from({ length: BATCH }, (_, row) => `(${Array.from({ length: 8 }, (_unused, i) => `$${row * 8 + i + 1}`).join(',')})`).join(',')}`;
  const insert = async (batch: readonly Kept[], at: number) => {
    await client.query(
      text,
      batch.flatMap((one, i) => rowOf(one, at + i)),
    );
  };
  return { insert, end: () => client.end() };
}

/** Entries a second, batch by batch in turn so that both meet the same machine. */
async function compare(where: Where, bare: (batch: readonly Kept[], at: number) => unknown): Promise<{ store: number; bare: number }> {
  const store = await openStore(where);
  const spent = { store: 0, bare: 0 };
  const batches = batchesOf(1);
  for (const [i, batch] of batches.entries()) {
    const began = performance.now();
    await bare(batch, i * BATCH);
    const middle = performance.now();
    await store.append(TEST_JOB, batch, []);
    if (i < 5) continue; // to warm up
    spent.bare += middle - began;
    spent.store += performance.now() - middle;
  }
  await store.close();
  const rate = (ms: number) => ((batches.length - 5) * BATCH * 1000) / ms;
  return { store: rate(spent.store), bare: rate(spent.bare) };
}

const line = (name: string, { store, bare }: { store: number; bare: number }) =>
  console.log(
    `store.append, ${name}, ${BATCH} a batch: ${Math.round(store)} durable entries/s, bare inserts ${Math.round(bare)}: ${Math.round((100 * store) / bare)} % (wanted ≥ 60 %)`,
  );

export async function logStoreBench(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-bench-'));
  line('SQLite', await compare({ folder: join(folder, 'data') }, bareSqlite(folder)));
  rmSync(folder, { recursive: true });
  const database = await testDatabase();
  if ('missing' in database) console.log(`left out: store.append on PostgreSQL (${database.missing})`);
  else {
    const bare = await barePostgres(database.url);
    line('PostgreSQL', await compare({ url: database.url }, bare.insert));
    await bare.end();
    await database.drop();
  }
}
