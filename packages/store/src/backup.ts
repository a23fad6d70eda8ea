import {
  canonicalBytes,
  type Hash,
  headBytes,
  type Json,
  joinBytes,
  receiptBytes,
  rootOf,
  type Section,
  sectionOf,
  utf8,
  writeContainer,
} from '@clampwright/record';
import type { Store } from './store.ts';

/** First line of a backup: all books, attachments and access records of a store, whichever engine it is on. */
export const BACKUP_LINE = 'clampwright-backup 1';
export const MOST_SECTION_BYTES = 1024 * 1024;
const ROWS = 500;
const NEWLINE = Uint8Array.of(10);

/** Writes a backup as it goes. Others may go on writing: every book is read up to the size it had at the beginning. */
export const writeBackup = (store: Store, made: Date): AsyncGenerator<Uint8Array> =>
  writeContainer(BACKUP_LINE, sectionsOf(store, made), (text) => text);

async function* sectionsOf(store: Store, made: Date): AsyncGenerator<Section> {
  const books = await Promise.all((await store.books()).map(async ({ job }) => ({ job, tail: await store.tail(job) })));
  yield sectionOf(
    'store',
    canonicalBytes({
      made: made.toISOString(),
      books: books.map(({ job, tail }) => ({ job, size: tail.size, root: hex(rootOf(tail)) })),
    } as Json),
  );
  for (const { job, tail } of books) {
    yield sectionOf('book', utf8(job));
    for (let from = 0; from < tail.size; ) {
      const rows = await store.rows(job, from, Math.min(ROWS, tail.size - from));
      from += rows.length;
      yield* pieces(
        'entries',
        rows.map(({ receipt, bytes }) => joinBytes(receiptBytes(receipt), NEWLINE, bytes, NEWLINE)),
      );
    }
    yield* pieces(
      'heads',
      (await store.heads(job)).map((head) => joinBytes(headBytes(head), NEWLINE)),
    );
    yield* pieces(
      'checkpoints',
      (await store.checkpoints(job)).map((one) => utf8(`${JSON.stringify(one)}\n`)),
    );
    for (const { hash, size } of await store.attachments.list(job))
      yield { name: 'attachment', length: size, hash: hash as Hash, bytes: store.attachments.read(job, hash) };
  }
  yield* pieces(
    'access',
    (await store.access.all()).map((record) => utf8(`${JSON.stringify(record)}\n`)),
  );
}

const hex = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex');

/** Rows in sections that a reader can hold. */
function* pieces(name: string, rows: readonly Uint8Array[]): Generator<Section> {
  let held: Uint8Array[] = [];
  let length = 0;
  for (const row of rows) {
    if (length > 0 && length + row.length > MOST_SECTION_BYTES) {
      yield sectionOf(name, joinBytes(...held));
      [held, length] = [[], 0];
    }
    held.push(row);
    length += row.length;
  }
  if (length > 0) yield sectionOf(name, joinBytes(...held));
}
