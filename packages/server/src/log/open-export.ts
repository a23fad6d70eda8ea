import { notice, type Outcome, refused } from '@clampwright/core';
import { planSchema } from '@clampwright/papers/schema';
import {
  bodySchemas,
  chainSchemas,
  entrySchema,
  hashOf,
  headBytes,
  isHash,
  joinBytes,
  openFold,
  readEntry,
  readHead,
  readReceipt,
  receiptBytes,
  rootOf,
  utf8,
} from '@clampwright/record';
import { checkBook, once, type Row, type Store } from '@clampwright/store';
import type { z } from 'zod/mini';
import { entriesOf } from './desk.ts';
import { type DeviceRecord, deviceRecord } from './devices.ts';
import { SERVER, type Yard } from './log-key.ts';
import { type About, about as aboutShape, checkpoints, devices, OPEN_EXPORT, openExportSchemas } from './open-export-schema.ts';

/** A file of an open export. */
export interface OpenFile {
  readonly path: string;
  readonly bytes: Uint8Array;
}

/** What an import reads from; `undefined`: not there. */
export type ReadFile = (path: string) => Promise<Uint8Array | undefined>;

const ABOUT = 'about.json';
const NEWLINE = Uint8Array.of(10);
const PAGE = 500;

/**
 * Everything a job holds as plain files: entries and receipts as the lines they are, signed heads, checkpoints, attachments under their
 * hashes, the same of the yard's book, public keys of devices, and JSON schemas of it all. Described in docs/open-export.md. The same
 * store gives the same bytes. Secrets, accounts and tokens are not in it.
 */
export async function* openExport(store: Store, job: string): AsyncGenerator<OpenFile> {
  const known = new Set((await store.books()).map((book) => book.job));
  const yard = await store.access.get<Yard>(SERVER, 'yard', 'yard');
  const hashes: Record<string, string> = {};
  const books: About['books'] = [];
  const noted = (file: OpenFile): OpenFile => {
    hashes[file.path] = hashOf(file.bytes);
    return file;
  };
  for (const book of [job, yard?.id].filter((one) => one !== undefined && known.has(one)) as string[]) {
    const tail = await store.tail(book);
    const attachments = (await store.attachments.list(book)).map(({ hash }) => hash);
    books.push({ job: book, size: tail.size, root: Buffer.from(rootOf(tail)).toString('hex'), attachments });
    yield noted({ path: `${book}/entries.ndjson`, bytes: await entryLines(store, book, tail.size) });
    const heads = (await store.heads(book)).map((head) => joinBytes(headBytes(head), NEWLINE));
    yield noted({ path: `${book}/heads.ndjson`, bytes: joinBytes(...heads) });
    yield noted({ path: `${book}/checkpoints.json`, bytes: json(await store.checkpoints(book)) });
    for (const hash of attachments) yield noted({ path: `${book}/attachments/${hash}`, bytes: await attachment(store, book, hash) });
  }
  yield noted({
    path: 'devices.json',
    bytes: json(
      await devicesOf(
        store,
        books.map((book) => book.job),
      ),
    ),
  });
  for (const [name, schema] of Object.entries(schemasOfAll())) yield noted({ path: `schemas/${name}.schema.json`, bytes: json(schema) });
  yield {
    path: ABOUT,
    bytes: json({ format: OPEN_EXPORT, ...(yard ? { yard } : {}), books, plans: await plansOf(store, job), files: hashes } satisfies About),
  };
}

/** What every file of the export looks like, for readers that are not ours. */
const schemasOfAll = (): Readonly<Record<string, unknown>> => ({
  entry: entrySchema(),
  ...Object.fromEntries(Object.entries(bodySchemas()).map(([name, schema]) => [`entry-${name}`, schema])),
  ...chainSchemas(),
  plan: planSchema(),
  ...openExportSchemas(),
});

const json = (value: unknown): Uint8Array => utf8(`${JSON.stringify(value, null, 1)}\n`);

async function entryLines(store: Store, job: string, size: number): Promise<Uint8Array> {
  const lines: Uint8Array[] = [];
  for (let from = 0; from < size; from += PAGE)
    for (const { receipt, bytes } of await store.rows(job, from, Math.min(PAGE, size - from)))
      lines.push(receiptBytes(receipt), NEWLINE, bytes, NEWLINE);
  return joinBytes(...lines);
}

async function attachment(store: Store, job: string, hash: string): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  for await (const piece of store.attachments.read(job, hash)) pieces.push(piece);
  return joinBytes(...pieces);
}

async function devicesOf(store: Store, jobs: readonly string[]): Promise<z.infer<typeof devices>> {
  const ids = new Set((await Promise.all(jobs.map((job) => store.devices(job)))).flat());
  const found = await Promise.all([...ids].sort().map(async (device) => ({ device, record: await deviceRecord(store, device) })));
  return found.flatMap(({ device, record }) => (record ? [{ device, name: record.name, key: record.key, enrolled: record.enrolled }] : []));
}

async function plansOf(store: Store, job: string): Promise<About['plans']> {
  const fold = openFold();
  for (const one of await entriesOf(store, job)) fold.add(one);
  return fold.state('book', 'book').plans.map(({ number, hash }) => ({ number, attachment: hash }));
}

const misfit = (path: string, problem: string) => refused(notice('export-misfit', { file: path, problem }, { file: path }));

/**
 * Puts an open export into a store that does not hold its books yet. Every file is held against its hash before anything is written, and
 * every book is read again afterwards and must have the root it was exported with.
 */
export async function openImport(
  store: Store,
  read: ReadFile,
): Promise<Outcome<readonly { readonly job: string; readonly size: number }[]>> {
  const about = parsed(aboutShape, await read(ABOUT));
  if (!about) return misfit(ABOUT, `it is no “${OPEN_EXPORT}”`);
  const files = new Map<string, Uint8Array>();
  for (const [path, hash] of Object.entries(about.files)) {
    const bytes = await read(path);
    if (!bytes) return misfit(path, 'it is missing');
    if (hashOf(bytes) !== hash) return misfit(path, 'it was changed');
    files.set(path, bytes);
  }
  const there = new Set((await store.books()).map(({ job }) => job));
  const listed = parsed(devices, files.get('devices.json'));
  if (!listed) return misfit('devices.json', 'it is damaged');
  const wanted: { readonly book: About['books'][number]; readonly rows: Row[]; readonly signed: z.infer<typeof checkpoints> }[] = [];
  for (const book of about.books) {
    if (there.has(book.job)) return misfit(`${book.job}/entries.ndjson`, 'its book is in this store already');
    const rows = rowsOf(files.get(`${book.job}/entries.ndjson`));
    if (!rows || rows.length !== book.size)
      return misfit(`${book.job}/entries.ndjson`, 'an entry cannot be read, or does not have its hash');
    const signed = parsed(checkpoints, files.get(`${book.job}/checkpoints.json`));
    if (!signed) return misfit(`${book.job}/checkpoints.json`, 'it is damaged');
    wanted.push({ book, rows, signed });
  }
  for (const { book, rows, signed } of wanted) {
    for (let from = 0; from < rows.length; from += PAGE) await store.restore(book.job, rows.slice(from, from + PAGE), []);
    const heads = linesOf(files.get(`${book.job}/heads.ndjson`)).map((line) => readHead(line));
    await store.restore(
      book.job,
      [],
      heads.flatMap((head) => (head.ok ? [head.value] : [])),
    );
    for (const { size, note } of signed) await store.putCheckpoint(book.job, size, note);
    for (const hash of book.attachments) {
      const bytes = files.get(`${book.job}/attachments/${hash}`);
      if (!isHash(hash) || !bytes || !(await store.attachments.put(book.job, hash, once(bytes))))
        return misfit(`${book.job}/attachments/${hash}`, 'it is not what its name says');
    }
    const found = await checkBook(store, book.job);
    if (found.fault !== undefined || Buffer.from(found.root).toString('hex') !== book.root)
      return misfit(`${book.job}/entries.ndjson`, found.fault ?? 'its root is another');
  }
  // known by its key, and with no token: it has to be enrolled again before it may write
  if (about.yard) await store.access.add(SERVER, 'yard', 'yard', about.yard);
  for (const { device, name, key, enrolled } of listed)
    await store.access.add(SERVER, 'device', device, {
      key,
      name,
      token: '',
      books: about.books.map(({ job }) => job),
      enrolled,
    } satisfies DeviceRecord);
  return { ok: true, value: about.books.map(({ job, size }) => ({ job, size })) };
}

function parsed<S extends z.ZodMiniType>(shape: S, bytes: Uint8Array | undefined): z.infer<S> | undefined {
  try {
    const read = bytes && shape.safeParse(JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)));
    return read?.success ? read.data : undefined;
  } catch {
    return undefined;
  }
}

function linesOf(bytes: Uint8Array | undefined): Uint8Array[] {
  const found: Uint8Array[] = [];
  if (!bytes) return found;
  let start = 0;
  for (let end = bytes.indexOf(10); end >= 0; end = bytes.indexOf(10, start)) {
    found.push(bytes.subarray(start, end));
    start = end + 1;
  }
  return found;
}

function rowsOf(bytes: Uint8Array | undefined): Row[] | undefined {
  const lines = linesOf(bytes);
  const rows: Row[] = [];
  for (let at = 0; at < lines.length; at += 2) {
    const [receipt, kept] = [readReceipt(lines[at]!), readEntry(lines[at + 1] ?? new Uint8Array())];
    if (!receipt.ok || !kept.ok || kept.value.hash !== receipt.value.entry || receipt.value.index !== at / 2) return undefined;
    rows.push({ receipt: receipt.value, bytes: lines[at + 1]! });
  }
  return rows;
}
