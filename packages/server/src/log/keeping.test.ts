import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bytesSource, utf8 } from '@clampwright/record';
import { openStore, restoreBackup } from '@clampwright/store';
import { unzipSync } from 'fflate';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { atDesk } from './desk.ts';
import { openImport } from './open-export.ts';
import { JOB, type TestYard, testYard } from './test-yard.ts';

let yard: TestYard;
const folder = mkdtempSync(join(tmpdir(), 'clampwright-keeping-'));
beforeAll(async () => {
  yard = await testYard();
  const written = await atDesk(
    yard.store,
    JOB,
    () => yard.clock.now,
    async (desk) => {
      const photo = await desk.attach(JOB, utf8('a photo'));
      await desk.append(JOB, 'photo-taken', { photo, type: 'image/jpeg' });
    },
  );
  if (!written.ok) throw new Error('nothing was entered');
});
afterAll(async () => {
  await yard.close();
  rmSync(folder, { recursive: true });
});
const send = (path: string, method: string, body: unknown, as: string) =>
  yard.ask(`/api/v1${path}`, { method, body: JSON.stringify(body), as });

test('a backup asks for the password again, goes to a planner of all jobs alone, and restores into an empty store', async () => {
  const all = await yard.signIn('planner', 'all');
  expect((await send('/backup', 'POST', { password: 'a guess of mine' }, all)).status).toBe(401);
  expect((await send('/backup', 'POST', { password: 'tide table 2026' }, await yard.signIn('planner'))).status).toBe(403);
  const answer = await send('/backup', 'POST', { password: 'tide table 2026' }, all);
  expect(answer.headers.get('content-disposition')).toBe('attachment; filename="clampwright-2026-11-25.backup"');
  const bytes = new Uint8Array(await answer.arrayBuffer());
  const store = await openStore({ folder: join(folder, 'restored') });
  const restored = await restoreBackup(store, bytesSource(bytes));
  expect(restored.ok && restored.value.books.map(({ job }) => job)).toContain(JOB);
  // a second time there is something to overwrite: nothing is
  expect(await restoreBackup(store, bytesSource(bytes))).toEqual({ ok: false, why: 'the store already holds books' });
  await store.close();
});

test('an open export is an archive of plain files that can be taken over elsewhere', async () => {
  const planner = await yard.signIn('planner');
  const answer = await yard.ask(`/api/v1/books/${JOB}/export`, { as: planner });
  expect(answer.headers.get('content-type')).toBe('application/zip');
  const files = unzipSync(new Uint8Array(await answer.arrayBuffer()));
  expect(Object.keys(files)).toContain(`${JOB}/entries.ndjson`);
  const text = Object.values(files)
    .map((bytes) => Buffer.from(bytes).toString('latin1'))
    .join('');
  expect(text).not.toContain('argon2id');
  const store = await openStore({ folder: join(folder, 'imported') });
  const taken = await openImport(store, async (path) => files[path]);
  expect(taken.ok && taken.value.map(({ job }) => job)).toContain(JOB);
  await store.close();
});

test('the organisation is set in the app, stands on reports, and keeps its mark until it is taken away', async () => {
  const planner = await yard.signIn('planner');
  const told = async () => (await yard.ask('/api/v1/organisation', { as: planner })).json();
  expect(await told()).toEqual({ name: 'Skerrow Sound tidal yard', mark: false });
  // one pixel
  const mark = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
  expect((await send('/organisation', 'PUT', { name: 'Tide and Tower', mark }, planner)).status).toBe(204);
  expect((await send('/organisation', 'PUT', { name: 'Tide and Tower', address: 'Skerrow quay' }, planner)).status).toBe(204);
  expect(await told()).toEqual({ name: 'Tide and Tower', address: 'Skerrow quay', mark: true });
  const report = await yard.ask(`/api/v1/books/${JOB}/report/en`, { as: planner });
  expect(Buffer.from(await report.arrayBuffer()).toString('latin1')).toContain('Tide and Tower');
  expect((await send('/organisation', 'PUT', { name: 'Tide and Tower', mark: btoa('no picture at all') }, planner)).status).toBe(400);
  expect((await send('/organisation', 'PUT', { name: 'Tide and Tower', mark: null }, planner)).status).toBe(204);
  expect(await told()).toEqual({ name: 'Tide and Tower', mark: false });
});
