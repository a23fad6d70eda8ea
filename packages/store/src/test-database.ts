import { randomBytes } from 'node:crypto';
import pg from 'pg';

/** PostgreSQL for tests: an address in CLAMPWRIGHT_TEST_DATABASE_URL, else the usual port of this machine. */
const ADDRESS = process.env.CLAMPWRIGHT_TEST_DATABASE_URL ?? 'postgres://postgres@127.0.0.1:5432/test';

export async function askDatabase(url: string, text: string): Promise<void> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 2000 });
  await client.connect();
  try {
    await client.query(text);
  } finally {
    await client.end();
  }
}

export interface TestDatabase {
  readonly url: string;
  readonly drop: () => Promise<void>;
}

/** A database of its own, or why there is none. */
export async function testDatabase(): Promise<TestDatabase | { readonly missing: string }> {
  const name = `clampwright_test_${randomBytes(6).toString('hex')}`;
  try {
    await askDatabase(ADDRESS, `create database ${name}`);
  } catch (error) {
    return { missing: `no PostgreSQL at ${new URL(ADDRESS).host}: ${(error as Error).message || (error as { code?: string }).code}` };
  }
  const url = new URL(ADDRESS);
  url.pathname = `/${name}`;
  return { url: url.href, drop: () => askDatabase(ADDRESS, `drop database ${name} with (force)`) };
}
