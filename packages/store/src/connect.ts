import { copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { CompiledQuery, type Dialect, Kysely, Migrator, PostgresDialect, SqliteDialect } from 'kysely';
import pg from 'pg';
import type { Engine } from './engine.ts';
import { type HotPath, postgresPath, sqlitePath } from './hot-path.ts';
import { migrationsFor } from './migrations/index.ts';
import type { Tables } from './tables.ts';

/** A folder for SQLite, or the address of a PostgreSQL database. */
export type Where = { readonly folder: string } | { readonly url: string };
export type Mode = 'server' | 'reader';

export interface Connected {
  readonly engine: Engine;
  readonly db: Kysely<Tables>;
  readonly hot: HotPath;
  readonly close: () => Promise<void>;
}

/** Another server already writes into this folder. */
export class FolderTaken extends Error {
  constructor(folder: string) {
    super(`another server writes into ${folder}`);
  }
}

export const connect = (where: Where, mode: Mode): Promise<Connected> =>
  'folder' in where ? connectFolder(where.folder, mode) : connectDatabase(where.url, mode);

const FILE = 'book.sqlite';

async function connectFolder(folder: string, mode: Mode): Promise<Connected> {
  if (mode === 'server') mkdirSync(folder, { recursive: true, mode: 0o700 });
  const release = mode === 'server' ? takeFolder(folder) : () => {};
  let file: Database.Database;
  try {
    file = mode === 'server' ? openWriting(join(folder, FILE)) : openReading(folder);
  } catch (error) {
    release();
    throw error;
  }
  const db = new Kysely<Tables>({ dialect: wholeMigrations(new SqliteDialect({ database: file })) });
  if (mode === 'server') await migrate(db, 'sqlite');
  return {
    engine: 'sqlite',
    db,
    hot: sqlitePath(file),
    close: async () => {
      await db.destroy();
      release();
    },
  };
}

/** SQLite takes changes of tables back with a transaction; the library does not count on it, and would leave half a migration behind. */
const wholeMigrations = (dialect: Dialect): Dialect => ({
  createDriver: () => dialect.createDriver(),
  createQueryCompiler: () => dialect.createQueryCompiler(),
  createIntrospector: (db) => dialect.createIntrospector(db),
  createAdapter: () => Object.defineProperty(dialect.createAdapter(), 'supportsTransactionalDdl', { value: true }),
});

function openWriting(path: string): Database.Database {
  const file = new Database(path, { timeout: 10_000 });
  // Durable when acknowledged: every commit is synced before it returns.
  file.pragma('journal_mode = WAL');
  file.pragma('synchronous = FULL');
  return file;
}

/** Readers share a small file with the writer; where the disk lets nobody make it, a copy of the books is read. */
function openReading(folder: string): Database.Database {
  const open = (path: string) => {
    const file = new Database(path, { readonly: true, fileMustExist: true, timeout: 10_000 });
    try {
      file.prepare('select count(*) from sqlite_master').get();
      return file;
    } catch (error) {
      file.close();
      throw error;
    }
  };
  try {
    return open(join(folder, FILE));
  } catch (error) {
    if (
      !['SQLITE_CANTOPEN', 'SQLITE_READONLY_DIRECTORY'].includes((error as { code?: string }).code ?? '') ||
      !existsSync(join(folder, FILE))
    )
      throw error;
    const copy = mkdtempSync(join(tmpdir(), 'clampwright-copy-'));
    try {
      for (const name of [FILE, `${FILE}-wal`]) if (existsSync(join(folder, name))) copyFileSync(join(folder, name), join(copy, name));
      return open(join(copy, FILE));
    } finally {
      // the open file outlives its name
      rmSync(copy, { recursive: true, force: true });
    }
  }
}

/** One server to a folder: the lock is the kernel's and falls with the process, however it ends. */
function takeFolder(folder: string): () => void {
  const lock = new Database(join(folder, 'writer.lock'), { timeout: 0 });
  try {
    lock.pragma('locking_mode = EXCLUSIVE');
    lock.exec('begin exclusive');
  } catch (error) {
    lock.close();
    if ((error as { code?: string }).code?.startsWith('SQLITE_BUSY')) throw new FolderTaken(folder);
    throw error;
  }
  return () => lock.close();
}

async function connectDatabase(url: string, mode: Mode): Promise<Connected> {
  if (mode === 'server') {
    const owner = new Kysely<Tables>({ dialect: new PostgresDialect({ pool: new pg.Pool({ connectionString: url, max: 1, types }) }) });
    try {
      await migrate(owner, 'postgres');
    } finally {
      await owner.destroy();
    }
  }
  const pool = new pg.Pool({ connectionString: url, max: 8, types, connectionTimeoutMillis: 5000 });
  // A connection that breaks while idle is replaced; one that breaks in somebody's hands fails the next question. Without a listener either
  // would end the process, and the pool listens only to the idle ones.
  pool.on('error', () => {});
  pool.on('connect', (client) => client.on('error', () => {}));
  const setUp = mode === 'server' ? 'set role clampwright_server' : 'set default_transaction_read_only = on';
  const db = new Kysely<Tables>({
    dialect: new PostgresDialect({
      pool,
      onCreateConnection: async (connection) => {
        await connection.executeQuery(CompiledQuery.raw(setUp));
      },
    }),
  });
  return { engine: 'postgres', db, hot: postgresPath(), close: () => db.destroy() };
}

const INT8 = 20;
/** Counts stay below 2⁵³; the driver would hand them out as text. */
const types: pg.CustomTypesConfig = {
  getTypeParser: (id: number, format?: 'text' | 'binary') =>
    id === INT8 && format !== 'binary' ? Number : (pg.types.getTypeParser(id as never, format as never) as never),
} as pg.CustomTypesConfig;

async function migrate(db: Kysely<Tables>, engine: Engine): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => migrationsFor(engine) } });
  const { error } = await migrator.migrateToLatest();
  if (error) throw error;
}
