import { type Kysely, type Migration, sql } from 'kysely';
import type { Engine } from '../engine.ts';

/** How many pieces each table is cut into by the hash of its job. */
const PARTITIONS = 16;

const COLUMNS = {
  entry: {
    columns:
      'job text not null, place {int} not null, hash {bytes} not null, device text not null, sequence {int} not null, counter {int} not null, arrived text not null, bytes {bytes} not null',
    key: 'job, place',
    unique: 'job, hash',
  },
  head: {
    columns: 'job text not null, device text not null, sequence {int} not null, hash {bytes} not null, bytes {bytes} not null',
    key: 'job, device, sequence, hash',
  },
  subtree: { columns: 'job text not null, run {int} not null, hash {bytes} not null', key: 'job, run' },
  checkpoint: { columns: 'job text not null, size {int} not null, note text not null', key: 'job, size' },
  tail: { columns: 'job text not null, size {int} not null, arrived text not null, frontier {bytes} not null', key: 'job' },
  attachment: { columns: 'job text not null, hash {bytes} not null, upload text not null, size {int} not null', key: 'job, hash' },
  attachment_part: {
    columns: 'job text not null, hash {bytes} not null, upload text not null, part {int} not null, bytes {bytes} not null',
    key: 'job, hash, upload, part',
  },
  access: {
    columns: 'job text not null, kind text not null, id text not null, value text not null, written text not null default {now}',
    key: 'job, kind, id',
  },
} as const satisfies Record<string, { columns: string; key: string; unique?: string }>;

const WRITTEN_ONCE = ['entry', 'head', 'subtree', 'checkpoint'] as const;

const TYPES: Record<Engine, Readonly<Record<string, string>>> = {
  sqlite: { int: 'integer', bytes: 'blob', now: 'current_timestamp' },
  postgres: { int: 'bigint', bytes: 'bytea', now: '(now()::text)' },
};

export const firstTables = (engine: Engine): Migration => ({
  up: async (db) => {
    const typed = (columns: string) => columns.replace(/\{(\w+)\}/g, (_, name: string) => TYPES[engine][name]!);
    for (const [table, shape] of Object.entries(COLUMNS)) {
      const tail = engine === 'sqlite' ? 'strict, without rowid' : 'partition by hash (job)';
      await run(db, `create table ${table} (${typed(shape.columns)}, primary key (${shape.key})) ${tail}`);
      if (engine === 'postgres')
        for (let part = 0; part < PARTITIONS; part += 1)
          await run(db, `create table ${table}_${part} partition of ${table} for values with (modulus ${PARTITIONS}, remainder ${part})`);
      if ('unique' in shape) await run(db, `create unique index ${table}_by_hash on ${table} (${shape.unique})`);
    }
    if (engine === 'sqlite') await refuseChangesSqlite(db);
    else await refuseChangesPostgres(db);
  },
});

async function refuseChangesSqlite(db: Kysely<unknown>): Promise<void> {
  for (const table of WRITTEN_ONCE)
    for (const change of ['update', 'delete'])
      await run(
        db,
        `create trigger ${table}_refuses_${change} before ${change} on ${table} begin select raise(abort, '${table} is written once'); end`,
      );
}

/** The server works as a role that cannot change what is written once; whoever owns the tables is refused by a trigger besides. */
async function refuseChangesPostgres(db: Kysely<unknown>): Promise<void> {
  // made here or by whoever owns the cluster; two databases of one cluster may come here at once
  await run(
    db,
    `do $$ begin
      if not exists (select from pg_roles where rolname = 'clampwright_server') then create role clampwright_server nologin; end if;
    exception when duplicate_object or unique_violation then null; end $$`,
  );
  await run(
    db,
    `do $$ begin
      if not pg_has_role(current_user, 'clampwright_server', 'member') then execute format('grant clampwright_server to %I', current_user); end if;
    end $$`,
  );
  const all = Object.keys(COLUMNS);
  await run(db, `revoke all on ${all.join(', ')} from clampwright_server`);
  await run(db, `grant select, insert on ${all.join(', ')} to clampwright_server`);
  await run(db, 'grant update on tail to clampwright_server');
  await run(db, 'grant update, delete on access, attachment, attachment_part to clampwright_server');
  await run(
    db,
    `create function written_once() returns trigger language plpgsql as $$ begin raise exception '% is written once', tg_table_name; end $$`,
  );
  for (const table of WRITTEN_ONCE) {
    await run(db, `create trigger ${table}_refuses before update or delete on ${table} for each row execute function written_once()`);
    await run(
      db,
      `create trigger ${table}_refuses_truncate before truncate on ${table} for each statement execute function written_once()`,
    );
  }
}

const run = (db: Kysely<unknown>, text: string) => sql.raw(text).execute(db);
