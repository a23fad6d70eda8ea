import { sql } from 'kysely';
import { expect, test } from 'vitest';
import { connect } from './connect.ts';
import { askDatabase, testDatabase } from './test-database.ts';

const database = await testDatabase();

test.skipIf('missing' in database)('a connection that breaks between two questions fails the next one, and ends nothing else', async () => {
  if ('missing' in database) return;
  const { db, close } = await connect({ url: database.url }, 'server');
  try {
    await db.connection().execute(async (taken) => {
      const { rows } = await sql<{ pid: number }>`select pg_backend_pid() as pid`.execute(taken);
      await askDatabase(database.url, `select pg_terminate_backend(${rows[0]!.pid})`);
      // the news of it arrives while nothing is asked; an error that nobody hears would end the process
      await new Promise((resolve) => setTimeout(resolve, 200));
      await expect(sql`select 1`.execute(taken)).rejects.toThrow();
    });
    const { rows } = await sql<{ one: number }>`select 1 as one`.execute(db);
    expect(rows).toEqual([{ one: 1 }]);
  } finally {
    await close();
    await database.drop();
  }
});
