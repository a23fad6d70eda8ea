import type { Migration } from 'kysely';
import type { Engine } from '../engine.ts';
import { firstTables } from './2026-11-first-tables.ts';

/** Forward only, in this order, for ever: a book of any earlier version is brought up when it is opened. */
export const migrationsFor = (engine: Engine): Record<string, Migration> => ({
  '2026-11-first-tables': firstTables(engine),
});
