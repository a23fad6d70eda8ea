import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore, type Store } from '../packages/store/src/index.ts';
import { testDatabase } from '../packages/store/src/test-database.ts';
import type { Count } from './count.ts';
import { simulatedDay } from './day.ts';

/** Simulated days: most on SQLite whose server stops and starts, some on two servers over one PostgreSQL. */
export async function days(count: Count, seeds: number, until: number): Promise<void> {
  const began = Date.now();
  let entries = 0;
  let done = 0;
  const judge = async (seed: number, servers: Parameters<typeof simulatedDay>[1]) => {
    const day = await simulatedDay(seed, servers);
    entries += day.entries;
    done += 1;
    count.check(`day ${seed}`, day.faults.length === 0, day.faults.join('; '));
    return day;
  };

  const folder = mkdtempSync(join(tmpdir(), 'clampwright-days-'));
  let store = await openStore({ folder });
  const onSqlite = {
    stores: () => [store],
    restart: async () => {
      await store.close();
      store = await openStore({ folder });
    },
  };
  const database = await testDatabase();
  const onPostgres = 'missing' in database ? 0 : Math.ceil(seeds / 10);
  if ('missing' in database) count.left('days on two servers over one PostgreSQL', database.missing);
  try {
    if (!('missing' in database)) {
      const pair: Store[] = [await openStore({ url: database.url }), await openStore({ url: database.url })];
      for (let seed = seeds - onPostgres + 1; seed <= seeds && Date.now() < until; seed += 1) await judge(seed, { stores: () => pair });
      for (const one of pair) await one.close();
    }
    for (let seed = 1; seed <= seeds - onPostgres && Date.now() < until; seed += 1) await judge(seed, onSqlite);
    // the same seed in a fresh store is the same day
    const again = mkdtempSync(join(tmpdir(), 'clampwright-again-'));
    const other = await openStore({ folder: again });
    const [first, second] = [await simulatedDay(7_000_001, onSqlite), await simulatedDay(7_000_001, { stores: () => [other] })];
    count.check('a seed gives one day', first.state === second.state && first.entries === second.entries);
    await other.close();
    rmSync(again, { recursive: true });
  } finally {
    await store.close();
    rmSync(folder, { recursive: true });
    if ('drop' in database) await database.drop();
  }
  console.log(`days: ${done} of ${seeds}, ${entries} entries, ${((Date.now() - began) / 1000).toFixed(0)} s`);
}
