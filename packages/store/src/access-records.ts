import type { Kysely } from 'kysely';
import type { Tables } from './tables.ts';

/** Small records that may change and be taken back: accounts, sessions, devices, codes. Not part of the log. */
export interface AccessRecords {
  readonly get: <T>(job: string, kind: string, id: string) => Promise<T | undefined>;
  readonly put: (job: string, kind: string, id: string, value: unknown) => Promise<void>;
  /** Writes it unless there is one; false where there was. */
  readonly add: (job: string, kind: string, id: string, value: unknown) => Promise<boolean>;
  /** Removes it and hands it out, to one asker alone. */
  readonly take: <T>(job: string, kind: string, id: string) => Promise<T | undefined>;
  readonly all: () => Promise<readonly AccessRecord[]>;
  readonly list: <T>(job: string, kind: string) => Promise<readonly { readonly id: string; readonly value: T }[]>;
}

/** A record as a backup holds it. */
export interface AccessRecord {
  readonly job: string;
  readonly kind: string;
  readonly id: string;
  readonly value: string;
}

export function accessRecords(db: Kysely<Tables>): AccessRecords {
  const row = (job: string, kind: string, id: string, value: unknown) => ({ job, kind, id, value: JSON.stringify(value) });
  return {
    get: async <T>(job: string, kind: string, id: string) => {
      const found = await db
        .selectFrom('access')
        .select('value')
        .where('job', '=', job)
        .where('kind', '=', kind)
        .where('id', '=', id)
        .executeTakeFirst();
      return found && (JSON.parse(found.value) as T);
    },
    put: async (job, kind, id, value) => {
      const one = row(job, kind, id, value);
      await db
        .insertInto('access')
        .values(one)
        .onConflict((conflict) => conflict.columns(['job', 'kind', 'id']).doUpdateSet({ value: one.value }))
        .execute();
    },
    add: async (job, kind, id, value) => {
      const added = await db
        .insertInto('access')
        .values(row(job, kind, id, value))
        .onConflict((conflict) => conflict.columns(['job', 'kind', 'id']).doNothing())
        .executeTakeFirst();
      return added.numInsertedOrUpdatedRows === 1n;
    },
    take: async <T>(job: string, kind: string, id: string) => {
      const taken = await db
        .deleteFrom('access')
        .where('job', '=', job)
        .where('kind', '=', kind)
        .where('id', '=', id)
        .returning('value')
        .executeTakeFirst();
      return taken && (JSON.parse(taken.value) as T);
    },
    all: () => db.selectFrom('access').select(['job', 'kind', 'id', 'value']).orderBy('job').orderBy('kind').orderBy('id').execute(),
    list: async <T>(job: string, kind: string) =>
      (await db.selectFrom('access').select(['id', 'value']).where('job', '=', job).where('kind', '=', kind).orderBy('id').execute()).map(
        ({ id, value }) => ({
          id,
          value: JSON.parse(value) as T,
        }),
      ),
  };
}
