import type { Database } from 'better-sqlite3';
import { CompiledQuery, type Transaction } from 'kysely';
import type { Tables } from './tables.ts';

type Entry = Tables['entry'];
type Known = Pick<Entry, 'hash' | 'place' | 'arrived'>;

/** The two statements that every batch runs for every entry; all others go through the query layer. */
export interface HotPath {
  /** Which of these are in the book already, where and since when. */
  readonly known: (db: Transaction<Tables>, job: string, hashes: readonly Buffer[]) => Promise<readonly Known[]>;
  readonly insert: (db: Transaction<Tables>, rows: readonly Entry[]) => Promise<void>;
}

const COLUMNS = ['job', 'place', 'hash', 'device', 'sequence', 'counter', 'arrived', 'bytes'] as const satisfies readonly (keyof Entry)[];
const valuesOf = ({ job, place, hash, device, sequence, counter, arrived, bytes }: Entry) => [
  job,
  place,
  hash,
  device,
  sequence,
  counter,
  arrived,
  bytes,
];
const KNOWN = 'select hash, place, arrived from entry where job =';

/** Prepared once, run on the connection whose transaction is open: half the cost of a statement that is put together for each batch. */
export function sqlitePath(file: Database): HotPath {
  const prepared = <T>(make: () => T) => {
    let one: T | undefined;
    return () => {
      one ??= make();
      return one;
    };
  };
  // not before the tables are there
  const select = prepared(() => file.prepare<[string, Buffer], Known>(`${KNOWN} ? and hash = ?`));
  const insert = prepared(() => file.prepare(`insert into entry (${COLUMNS.join(', ')}) values (${COLUMNS.map(() => '?').join(', ')})`));
  return {
    known: async (_db, job, hashes) => {
      const statement = select();
      return hashes.flatMap((hash) => statement.get(job, hash) ?? []);
    },
    insert: async (_db, rows) => {
      const statement = insert();
      for (const row of rows) statement.run(...valuesOf(row));
    },
  };
}

/** Rows to a statement: the protocol bounds the number of its parameters. */
const MOST_ROWS = 500;

/** One statement for many rows, its text put together once for each number of them. */
export function postgresPath(): HotPath {
  const texts = new Map<string, string>();
  const textOf = (name: string, count: number, make: () => string) => {
    const key = `${name} ${count}`;
    const text = texts.get(key) ?? make();
    texts.set(key, text);
    return text;
  };
  const list = (count: number, from: number) => Array.from({ length: count }, (_, i) => `$${from + i}`).join(', ');
  return {
    known: async (db, job, hashes) => {
      const text = textOf('known', hashes.length, () => `${KNOWN} $1 and hash in (${list(hashes.length, 2)})`);
      return (await db.executeQuery<Known>(CompiledQuery.raw(text, [job, ...hashes]))).rows;
    },
    insert: async (db, rows) => {
      for (let at = 0; at < rows.length; at += MOST_ROWS) {
        const some = rows.slice(at, at + MOST_ROWS);
        const text = textOf('insert', some.length, () => {
          const lines = some.map((_, i) => `(${list(COLUMNS.length, i * COLUMNS.length + 1)})`);
          return `insert into entry (${COLUMNS.join(', ')}) values ${lines.join(', ')}`;
        });
        await db.executeQuery(CompiledQuery.raw(text, some.flatMap(valuesOf)));
      }
    },
  };
}
