import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { bytesSource, rootOf, signCheckpoint, verifyHandover } from '../packages/record/src/index.ts';
import { TEST_JOB } from '../packages/record/src/test-book.ts';
import { handoverBytes, TEST_LOG, testBook, testLog, testSource } from '../packages/record/src/test-handover.ts';
import { checkBook, openStore, type Row, type Store } from '../packages/store/src/index.ts';
import type { Count } from './count.ts';
import { type Random, randomBy } from './random.ts';

/** Books and files changed in every way one can think of: each change has to be found. */
export async function tamper(count: Count, mutations: number): Promise<void> {
  const began = Date.now();
  await tamperFiles(count, Math.ceil(mutations * 0.8));
  await tamperBooks(count, Math.ceil(mutations * 0.2));
  console.log(`tamper: ${mutations} mutations, ${((Date.now() - began) / 1000).toFixed(0)} s`);
}

type Change = (bytes: Uint8Array, random: Random) => Uint8Array;
const cut = (bytes: Uint8Array, from: number, to: number) => Uint8Array.from([...bytes.subarray(0, from), ...bytes.subarray(to)]);
const put = (bytes: Uint8Array, at: number, more: ArrayLike<number>) =>
  Uint8Array.from([...bytes.subarray(0, at), ...Array.from(more), ...bytes.subarray(at)]);
const linesOf = (bytes: Uint8Array) => {
  const starts = [0];
  for (const [at, byte] of bytes.entries()) if (byte === 10) starts.push(at + 1);
  return starts;
};

/** Byte by byte and line by line. */
const CHANGES: Readonly<Record<string, Change>> = {
  'one bit turned': (bytes, random) => {
    const changed = bytes.slice();
    changed[random.below(bytes.length)]! ^= 1 << random.below(8);
    return changed;
  },
  'one byte dropped': (bytes, random) => {
    const at = random.below(bytes.length);
    return cut(bytes, at, at + 1);
  },
  'one byte put in': (bytes, random) => put(bytes, random.below(bytes.length + 1), [random.below(256)]),
  'a stretch dropped': (bytes, random) => {
    const at = random.below(bytes.length);
    return cut(bytes, at, Math.min(bytes.length, at + 1 + random.below(400)));
  },
  'cut short': (bytes, random) => bytes.slice(0, random.below(bytes.length)),
  'two lines exchanged': (bytes, random) => {
    const starts = linesOf(bytes);
    const at = random.below(starts.length - 3);
    const [a, b, c] = [starts[at]!, starts[at + 1]!, starts[at + 2]!];
    return Uint8Array.from([...bytes.subarray(0, a), ...bytes.subarray(b, c), ...bytes.subarray(a, b), ...bytes.subarray(c)]);
  },
  'a line dropped': (bytes, random) => {
    const starts = linesOf(bytes);
    const at = random.below(starts.length - 2);
    return cut(bytes, starts[at]!, starts[at + 1]!);
  },
  'a line twice': (bytes, random) => {
    const starts = linesOf(bytes);
    const at = random.below(starts.length - 2);
    return put(bytes, starts[at]!, bytes.subarray(starts[at], starts[at + 1]));
  },
};
const same = (a: Uint8Array, b: Uint8Array) => a.length === b.length && a.every((byte, at) => byte === b[at]);

async function tamperFiles(count: Count, mutations: number): Promise<void> {
  const random = randomBy(11);
  const book = testBook(1);
  const file = await handoverBytes(testSource({ ...book, heads: book.heads.slice(-3) }));
  const key = Buffer.from(file)
    .toString('latin1')
    .match(/skerrow\+[0-9a-f]{8}\+[\w+/=]+/)![0];
  count.check('the file itself verifies', (await verifyHandover(bytesSource(file), { key })).ok);
  const kinds = Object.entries(CHANGES);
  let missed = 0;
  let notNamed = 0;
  for (let i = 0; i < mutations; i += 1) {
    const [name, change] = kinds[i % kinds.length]!;
    const changed = change(file, random);
    if (same(changed, file)) continue; // two like lines exchanged
    const result = await verifyHandover(bytesSource(changed), { key });
    if (result.ok) {
      missed += 1;
      console.log(`not found: ${name}`);
    } else if (!(result.fault.byte >= 0 && result.fault.byte <= changed.length)) notNamed += 1;
  }
  count.check(`${mutations} changes of a handover file are found`, missed === 0, `${missed} are not`);
  count.check('each names a byte of the file', notNamed === 0);
  const later = signCheckpoint(
    { job: TEST_JOB, size: testLog(book).tail.size, root: rootOf(testLog(book).tail) },
    TEST_LOG.name,
    TEST_LOG.keys,
  );
  const cutBack = await handoverBytes(testSource({ ...book, entries: book.entries.slice(0, 20), heads: [] }));
  count.check('a file cut back whole shows against a later checkpoint', !(await verifyHandover(bytesSource(cutBack), { seen: later })).ok);
}

/** Rows changed behind the back of a stored book: triggers removed first, as somebody would who means it. */
const ROW_CHANGES: Readonly<Record<string, (random: Random, size: number) => readonly string[]>> = {
  'an entry dropped': (random, size) => [`delete from entry where place = ${random.below(size)}`],
  'an entry dropped and the others moved up': (random, size) => {
    const at = random.below(size);
    return [
      `delete from entry where place = ${at}`,
      `update entry set place = place - 1 where place > ${at}`,
      'update tail set size = size - 1',
    ];
  },
  'two entries exchanged': (random, size) => {
    const at = random.below(size - 1);
    return [
      `update entry set place = -1 where place = ${at}`,
      `update entry set place = ${at} where place = ${at + 1}`,
      `update entry set place = ${at + 1} where place = -1`,
    ];
  },
  'an arrival moved': (random, size) => [`update entry set arrived = '2026-11-24T00:00:00.000Z' where place = ${random.below(size)}`],
  'a byte of an entry changed': (random, size) => {
    const at = random.below(size);
    return [`update entry set bytes = cast(replace(cast(bytes as text), '"format":1', '"format":2') as blob) where place = ${at}`];
  },
  'a hash changed': (random, size) => [`update entry set hash = randomblob(32) where place = ${random.below(size)}`],
  'the end cut off': (random, size) => [`delete from entry where place >= ${1 + random.below(size - 1)}`],
  'the end cut off and the tail set back': (random, size) => {
    const at = 1 + random.below(size - 1);
    return [`delete from entry where place >= ${at}`, `update tail set size = ${at}`];
  },
  'an entry put in again': (random, size) => [
    `insert into entry select job, ${size}, randomblob(32), device, sequence, counter, arrived, bytes from entry where place = ${random.below(size)}`,
    'update tail set size = size + 1',
  ],
  'the root changed': () => ['update tail set frontier = randomblob(length(frontier))'],
  'a signed head changed': (random) => [`update head set bytes = cast(replace(cast(bytes as text), '${random.below(10)}', 'a') as blob)`],
};

async function tamperBooks(count: Count, mutations: number): Promise<void> {
  const random = randomBy(12);
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-tamper-'));
  const book = testBook(1);
  const keys = new Map(book.keys.map(({ device, key }) => [device, key]));
  const check = async (where: string) => {
    let store: Store | undefined;
    try {
      store = await openStore({ folder: where }, { mode: 'reader' });
      const { fault } = await checkBook(store, TEST_JOB, { device: async (id) => keys.get(id) });
      return fault ?? (await contentOf(store.rows(TEST_JOB, 0, 1000)));
    } catch (error) {
      return `cannot be read: ${(error as Error).message}`;
    } finally {
      await store?.close();
    }
  };
  try {
    const whole = join(folder, 'whole');
    const store = await openStore({ folder: whole });
    await store.append(TEST_JOB, book.entries, book.heads);
    const content = await contentOf(store.rows(TEST_JOB, 0, 1000));
    await store.close();
    const bytes = readFileSync(join(whole, 'book.sqlite'));
    const copy = join(folder, 'copy');
    mkdirSync(copy);
    const kinds = Object.entries(ROW_CHANGES);
    let [missed, silent] = [0, 0];
    for (let i = 0; i < mutations; i += 1) {
      for (const name of ['book.sqlite-wal', 'book.sqlite-shm']) rmSync(join(copy, name), { force: true });
      if (i % 2 === 0) {
        copyFileSync(join(whole, 'book.sqlite'), join(copy, 'book.sqlite'));
        const [name, change] = kinds[(i / 2) % kinds.length]!;
        const file = new Database(join(copy, 'book.sqlite'));
        for (const { name: trigger } of file.prepare("select name from sqlite_master where type = 'trigger'").all() as { name: string }[])
          file.exec(`drop trigger ${trigger}`);
        let changed = 0;
        for (const statement of change(random, book.entries.length)) changed += file.prepare(statement).run().changes;
        file.close();
        if (changed > 0 && (await check(copy)) === content) {
          missed += 1;
          console.log(`not found: ${name}`);
        }
      } else {
        // a bit of the file itself: either it is found, or it was in no part of the book
        const changed = Buffer.from(bytes);
        changed[random.below(changed.length)]! ^= 1 << random.below(8);
        writeFileSync(join(copy, 'book.sqlite'), changed);
        const found = await check(copy);
        if (found !== content && found.startsWith('[')) silent += 1;
      }
    }
    count.check(`${mutations} changes of a stored book are found`, missed === 0, `${missed} are not`);
    count.check('no bit turned in the file gives another book in silence', silent === 0, `${silent} did`);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const contentOf = async (rows: Promise<readonly Row[]>) =>
  JSON.stringify((await rows).map(({ receipt, bytes }) => [receipt, Buffer.from(bytes).toString('latin1')]));
