import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  EMPTY_FRONTIER,
  grow,
  hashOf,
  isConsistent,
  isIncluded,
  type Kept,
  leafHash,
  receiptBytes,
  rootOf,
  utf8,
} from '@clampwright/record';
import { jointId, TEST_JOB, testWriter } from '@clampwright/record/test-book';
import Database from 'better-sqlite3';
import pg from 'pg';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkBook, checkEnd, FolderTaken, openStore, type Store, type Where } from './index.ts';
import { askDatabase, testDatabase } from './test-database.ts';

const database = await testDatabase();
const folder = mkdtempSync(join(tmpdir(), 'clampwright-store-'));
afterAll(async () => {
  rmSync(folder, { recursive: true });
  if ('drop' in database) await database.drop();
});
if ('missing' in database) console.log(`left out: the store on PostgreSQL (${database.missing})`);

const notes = (count: number, writer = testWriter(1)): Kept[] =>
  Array.from({ length: count }, (_, i) => writer.write('note-written', { text: `note ${i}` }));
const stores: [string, Where][] = [
  ['SQLite', { folder: join(folder, 'data') }],
  ...('url' in database ? [['PostgreSQL', { url: database.url }] as [string, Where]] : []),
];

async function* pieces(...parts: readonly Uint8Array[]) {
  yield* parts;
}
async function all(bytes: AsyncIterable<Uint8Array>) {
  const parts: Uint8Array[] = [];
  for await (const part of bytes) parts.push(part);
  return Buffer.concat(parts);
}
/** Runs a statement around the store, as somebody with the database's own tools would. */
async function behind(where: Where, text: string, role?: string): Promise<void> {
  if ('folder' in where) {
    const file = new Database(join(where.folder, 'book.sqlite'));
    try {
      file.exec(text);
    } finally {
      file.close();
    }
    return;
  }
  const client = new pg.Client({ connectionString: where.url });
  await client.connect();
  try {
    if (role) await client.query(`set role ${role}`);
    await client.query(text);
  } finally {
    await client.end();
  }
}

describe.each(stores)('the store on %s', (_, where) => {
  let store: Store;
  const writer = testWriter(1);
  const entries = notes(900, writer);
  beforeAll(async () => {
    store = await openStore(where);
  });
  afterAll(() => store.close());

  test('gives places in the order of arrival, and the same receipt when an entry comes again', async () => {
    const first = await store.append(TEST_JOB, entries.slice(0, 3), [writer.head()]);
    expect(first.map(({ index }) => index)).toEqual([0, 1, 2]);
    const again = await store.append(TEST_JOB, entries.slice(1, 5), []);
    expect(again.slice(0, 2)).toEqual(first.slice(1));
    expect(again.map(({ index }) => index)).toEqual([1, 2, 3, 4]);
    // the same entry twice in one batch
    const twice = await store.append(TEST_JOB, [entries[5]!, entries[5]!], []);
    expect(twice[0]).toEqual(twice[1]);
  });
  test('gives back the very bytes, receipts and heads', async () => {
    const rows = await store.rows(TEST_JOB, 0, 5);
    expect(rows.map(({ bytes }) => bytes)).toEqual(entries.slice(0, 5).map(({ bytes }) => bytes));
    expect(rows.map(({ receipt }) => receipt.entry)).toEqual(entries.slice(0, 5).map(({ hash }) => hash));
    expect(await store.heads(TEST_JOB)).toEqual([writer.head()]);
    expect(await store.counterOf(TEST_JOB, writer.device, 2, entries[2]!.hash)).toBe(3);
    expect(await store.counterOf(TEST_JOB, writer.device, 1, entries[2]!.hash)).toBe(undefined);
  });
  test('keeps a tail that is the tree of its receipts, and proves every kind of place and size', async () => {
    for (let at = 6; at < entries.length; at += 100) await store.append(TEST_JOB, entries.slice(at, at + 100), []);
    const rows = await store.rows(TEST_JOB, 0, 1000);
    const leaves = rows.map(({ receipt }) => leafHash(receiptBytes(receipt)));
    const rootAt = (size: number) => rootOf(leaves.slice(0, size).reduce(grow, EMPTY_FRONTIER));
    const tail = await store.tail(TEST_JOB);
    expect(tail.size).toBe(900);
    expect(rootOf(tail)).toEqual(rootAt(900));
    for (const size of [1, 2, 255, 256, 257, 511, 512, 513, 700, 768, 769, 900]) {
      for (const index of [0, 1, 254, 255, 256, 511, 512, 640, 767, 768, 899].filter((one) => one < size))
        expect({
          size,
          index,
          ok: isIncluded(leaves[index]!, index, size, await store.inclusion(TEST_JOB, index, size), rootAt(size)),
        }).toEqual({ size, index, ok: true });
      for (const first of [1, 2, 255, 256, 257, 300, 512, 513, 768, 899].filter((one) => one <= size))
        expect({
          size,
          first,
          ok: isConsistent(first, rootAt(first), size, rootAt(size), await store.consistency(TEST_JOB, first, size)),
        }).toEqual({ size, first, ok: true });
    }
  });
  test('passes its own check, end and whole', async () => {
    expect((await checkBook(store, TEST_JOB)).fault).toBe(undefined);
    expect(await checkEnd(store, TEST_JOB)).toBe(undefined);
  });
  test.each([
    ['update', "update entry set arrived = 'never'"],
    ['delete', 'delete from entry'],
    ['update of a checkpoint', "update checkpoint set note = 'x'"],
    ['delete of a head', 'delete from head'],
    ['update of a subtree', 'update subtree set run = 7'],
  ])('refuses %s, even around the store', async (_name, text) => {
    await store.putCheckpoint(TEST_JOB, 900, 'note');
    await expect(behind(where, text)).rejects.toThrow(/is written once/);
    if ('url' in where) await expect(behind(where, text, 'clampwright_server')).rejects.toThrow(/permission denied/);
    expect((await store.tail(TEST_JOB)).size).toBe(900);
  });
  test('keeps books apart', async () => {
    const other = TEST_JOB.replace('j-1', 'j-2').replace('j-0', 'j-2');
    const one = testWriter(1, other).write('note-written', { text: 'elsewhere' });
    expect((await store.append(other, [one], []))[0]).toMatchObject({ job: other, index: 0 });
    expect((await store.books()).map(({ job, size }) => [job, size])).toEqual(
      [
        [TEST_JOB, 900],
        [other, 1],
      ].sort(),
    );
  });
  test('takes batches for one book from many at once, and gives every entry one place', async () => {
    const job = TEST_JOB.replace(/.$/, 'z');
    const writers = Array.from({ length: 20 }, (_one, i) => testWriter(i + 10, job));
    const batches = writers.map((one) => notes(20, one));
    const receipts = await Promise.all(batches.map((batch) => store.append(job, batch, [])));
    expect(
      receipts
        .flat()
        .map(({ index }) => index)
        .sort((a, b) => a - b),
    ).toEqual(Array.from({ length: 400 }, (_one, i) => i));
    expect((await checkBook(store, job)).fault).toBe(undefined);
  });
  test('streams attachments in and out by their hash, refuses others, and erases', async () => {
    const bytes = Buffer.alloc(700_001, 'bolt ');
    const hash = hashOf(bytes);
    expect(
      await store.attachments.put(TEST_JOB, hash, pieces(bytes.subarray(0, 10), bytes.subarray(10, 500_000), bytes.subarray(500_000))),
    ).toBe(true);
    expect(await store.attachments.size(TEST_JOB, hash)).toBe(700_001);
    expect((await all(store.attachments.read(TEST_JOB, hash))).equals(bytes)).toBe(true);
    expect(await store.attachments.put(TEST_JOB, hashOf(utf8('x')), pieces(utf8('y')))).toBe(false);
    expect(await store.attachments.list(TEST_JOB)).toEqual([{ hash, size: 700_001 }]);
    await store.attachments.erase(TEST_JOB, hash);
    expect(await store.attachments.size(TEST_JOB, hash)).toBe(undefined);
  });
  test('hands a one-time record to one asker alone', async () => {
    const { access } = store;
    expect(await access.add('y', 'code', 'abc', { for: jointId(1) })).toBe(true);
    expect(await access.add('y', 'code', 'abc', {})).toBe(false);
    const taken = await Promise.all([access.take('y', 'code', 'abc'), access.take('y', 'code', 'abc')]);
    expect(taken.filter((one) => one !== undefined)).toEqual([{ for: jointId(1) }]);
    await access.put('y', 'session', 's', 1);
    await access.put('y', 'session', 's', 2);
    expect(await access.list('y', 'session')).toEqual([{ id: 's', value: 2 }]);
  });
  test('opens again with all that was acknowledged', async () => {
    await store.close();
    store = await openStore(where);
    expect((await store.tail(TEST_JOB)).size).toBe(900);
    expect((await checkBook(store, TEST_JOB)).fault).toBe(undefined);
  });
});

describe('a folder', () => {
  test('is taken by one server, and read by others meanwhile', async () => {
    const where = { folder: join(folder, 'one') };
    const server = await openStore(where);
    await server.append(TEST_JOB, notes(2), []);
    await expect(openStore(where)).rejects.toThrow(FolderTaken);
    const reader = await openStore(where, { mode: 'reader' });
    expect((await reader.tail(TEST_JOB)).size).toBe(2);
    await expect(reader.append(TEST_JOB, notes(3), [])).rejects.toThrow();
    await reader.close();
    await server.close();
    await (await openStore(where)).close();
  });
  test('commits are synced before they return', async () => {
    const file = new Database(join(folder, 'one', 'book.sqlite'));
    expect(file.pragma('journal_mode', { simple: true })).toBe('wal');
    file.close();
  });
});

describe.skipIf('missing' in database)('a login that is no superuser', () => {
  test('sets up its own database, works as the server’s role, and changes nothing that is written once', async () => {
    const { url } = database as { url: string };
    const login = `yard_${process.pid}`;
    await askDatabase(url, `create role ${login} login createrole`);
    await askDatabase(url, `create database ${login} owner ${login}`);
    const own = new URL(url);
    own.pathname = `/${login}`;
    own.username = login;
    try {
      const store = await openStore({ url: own.href });
      await store.append(TEST_JOB, notes(3), []);
      await expect(behind({ url: own.href }, 'delete from entry')).rejects.toThrow(/is written once/);
      await expect(behind({ url: own.href }, 'truncate entry')).rejects.toThrow(/is written once/);
      expect((await checkBook(store, TEST_JOB)).fault).toBe(undefined);
      await store.close();
    } finally {
      await askDatabase(url, `drop database ${login} with (force)`);
      await askDatabase(url, `revoke clampwright_server from ${login}; drop role ${login}`);
    }
  });
});

describe.skipIf('missing' in database)('two servers on one PostgreSQL', () => {
  test('order one book together', async () => {
    const where = database as { url: string };
    const [one, two] = [await openStore(where), await openStore(where)];
    const job = TEST_JOB.replace(/.$/, 'y');
    const writers = Array.from({ length: 12 }, (_, i) => testWriter(i + 50, job));
    const receipts = await Promise.all(writers.map((writer, i) => (i % 2 ? one : two).append(job, notes(15, writer), [])));
    expect(new Set(receipts.flat().map(({ index }) => index)).size).toBe(180);
    expect((await checkBook(two, job)).fault).toBe(undefined);
    await one.close();
    await two.close();
  });
});
