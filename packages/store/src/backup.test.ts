import { cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bytesSource, joinBytes, rootOf, utf8 } from '@clampwright/record';
import { TEST_JOB } from '@clampwright/record/test-book';
import { testBook } from '@clampwright/record/test-handover';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { checkBook, fileSource, openStore, restoreBackup, type Store, type Where, writeBackup, writeFileWhole } from './index.ts';
import { testDatabase } from './test-database.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-backup-'));
const database = await testDatabase();
if ('missing' in database) console.log(`left out: backup to and from PostgreSQL (${database.missing})`);
const book = testBook(30);

let full: Store;
let backup: Uint8Array;
beforeAll(async () => {
  full = await openStore({ folder: join(folder, 'full') });
  for (let at = 0; at < book.entries.length; at += 400)
    await full.append(TEST_JOB, book.entries.slice(at, at + 400), at === 0 ? book.heads : []);
  for (const [hash, bytes] of book.attachments)
    await full.attachments.put(
      TEST_JOB,
      hash,
      (async function* () {
        yield bytes;
      })(),
    );
  await full.putCheckpoint(TEST_JOB, 10, 'a note\n');
  await full.access.put('yard', 'account', 'ailsa', { role: 'planner' });
  const parts: Uint8Array[] = [];
  for await (const part of writeBackup(full, new Date('2026-11-26T00:00:00.000Z'))) parts.push(part);
  backup = joinBytes(...parts);
});
afterAll(async () => {
  await full.close();
  rmSync(folder, { recursive: true });
  if ('drop' in database) await database.drop();
});

const targets: [string, Where][] = [
  ['SQLite', { folder: join(folder, 'restored') }],
  ...('url' in database ? [['PostgreSQL', { url: database.url }] as [string, Where]] : []),
];

describe.each(targets)('a backup restored to %s', (_, where) => {
  test('comes back with every entry, head, checkpoint, attachment and record, and is verified', async () => {
    const store = await openStore(where);
    try {
      const restored = await restoreBackup(store, bytesSource(backup));
      expect(restored).toEqual({ ok: true, value: { books: [{ job: TEST_JOB, size: book.entries.length }] } });
      expect(await store.tail(TEST_JOB)).toEqual(await full.tail(TEST_JOB));
      expect(await store.rows(TEST_JOB, 0, 2000)).toEqual(await full.rows(TEST_JOB, 0, 2000));
      expect(await store.heads(TEST_JOB)).toEqual(await full.heads(TEST_JOB));
      expect(await store.checkpoints(TEST_JOB)).toEqual([{ size: 10, note: 'a note\n' }]);
      expect(await store.attachments.list(TEST_JOB)).toEqual(await full.attachments.list(TEST_JOB));
      expect(await store.access.get('yard', 'account', 'ailsa')).toEqual({ role: 'planner' });
      expect(await store.inclusion(TEST_JOB, 300, 600)).toEqual(await full.inclusion(TEST_JOB, 300, 600));
      expect(await restoreBackup(store, bytesSource(backup))).toMatchObject({ ok: false });
    } finally {
      await store.close();
    }
  });
});

describe('a backup', () => {
  test('that is not whole, or has a bit turned, restores nothing', async () => {
    const store = await openStore({ folder: join(folder, 'empty') });
    for (const at of [3, 200, 5000, 50_000, backup.length - 80]) {
      const changed = backup.slice();
      changed[at]! ^= 4;
      expect((await restoreBackup(store, bytesSource(changed))).ok).toBe(false);
    }
    expect((await restoreBackup(store, bytesSource(backup.slice(0, -1)))).ok).toBe(false);
    expect(await store.books()).toEqual([]);
    await store.close();
  });
  test('is written whole beside what is there, and never over it', async () => {
    const path = join(folder, 'one.backup');
    async function* pieces() {
      yield utf8('one ');
      yield utf8('two');
    }
    expect(await writeFileWhole(path, pieces())).toBe(7);
    await expect(writeFileWhole(path, pieces())).rejects.toThrow(/EEXIST/);
    const source = await fileSource(path);
    expect(Buffer.from(await source.read(4, 100)).toString()).toBe('two');
    await source.close();
    expect(readFileSync(path, 'utf8')).toBe('one two');
  });
});

// Written by the release that first had this format and never written again: a book of it must open for ever.
describe('the book of format 1 that is kept with the tests', () => {
  const ROOT = '054fe670762f3d09a649dcf4b35e6ff11d50e839c9c3fe8c9c59357ae150d873';
  test('opens, is brought up to date and checks out', async () => {
    const where = { folder: join(folder, 'fixture') };
    cpSync('packages/store/fixtures/format-1', where.folder, { recursive: true });
    const store = await openStore(where);
    try {
      expect(await checkBook(store, TEST_JOB)).toMatchObject({ size: 60 });
      expect((await checkBook(store, TEST_JOB)).fault).toBe(undefined);
      expect(Buffer.from(rootOf(await store.tail(TEST_JOB))).toString('hex')).toBe(ROOT);
      expect(await store.attachments.list(TEST_JOB)).toHaveLength(2);
    } finally {
      await store.close();
    }
  });
  test('is restored from its backup', async () => {
    const store = await openStore({ folder: join(folder, 'fixture-backup') });
    try {
      expect(await restoreBackup(store, bytesSource(readFileSync('packages/store/fixtures/format-1.backup')))).toMatchObject({ ok: true });
      expect(Buffer.from(rootOf(await store.tail(TEST_JOB))).toString('hex')).toBe(ROOT);
    } finally {
      await store.close();
    }
  });
});
