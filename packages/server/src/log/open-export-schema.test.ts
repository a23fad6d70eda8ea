import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chainSchemas, hashOf, readUtf8, utf8 } from '@clampwright/record';
import { openStore, type Store } from '@clampwright/store';
import { httpTransport, memoryShelf, openDevice, syncBook } from '@clampwright/sync';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openExport, openImport } from './open-export.ts';
import { openExportSchemas } from './open-export-schema.ts';
import { JOB, type TestYard, testYard } from './test-yard.ts';

const SCHEMAS: Readonly<Record<string, unknown>> = { ...openExportSchemas(), ...chainSchemas() };
// an independent reader of JSON Schema
const ajv = new Ajv2020({ strict: false });
const shape = (name: string) => ajv.compile(SCHEMAS[name] as object);
const fits = {
  about: shape('open-export-about'),
  checkpoints: shape('open-export-checkpoints'),
  devices: shape('open-export-devices'),
  receipt: shape('receipt'),
  head: shape('head'),
};

test.each(Object.keys(SCHEMAS))('docs/schemas/%s.schema.json says what is written now (vitest -u writes it anew)', async (name) => {
  await expect(`${JSON.stringify(SCHEMAS[name], null, 1)}\n`).toMatchFileSnapshot(`../../../../docs/schemas/${name}.schema.json`);
});

let yard: TestYard;
const files = new Map<string, Uint8Array>();
const told = (path: string) => JSON.parse(readUtf8(files.get(path)!)!) as never;
beforeAll(async () => {
  yard = await testYard();
  const { keys, token } = await yard.enrol(2);
  const phone = openDevice({ shelf: memoryShelf(), keys, now: () => yard.clock.now, offsetMinutes: () => 0 });
  await phone.append(JOB, 'note-written', { text: 'rain' });
  const fetching = ((url: string, init: RequestInit) => yard.app.request(url, init)) as typeof fetch;
  await syncBook(phone, JOB, httpTransport({ server: 'http://yard.test', token, fetch: fetching }), yard.context.log.note);
  const { size, note } = await yard.context.checkpoints(JOB);
  await yard.store.putCheckpoint(JOB, size, note);
  for await (const { path, bytes } of openExport(yard.store, JOB)) files.set(path, bytes);
});
afterAll(() => yard.close());

test('the files of an export are what their schemas say', () => {
  const lines = readUtf8(files.get(`${JOB}/entries.ndjson`)!)!
    .trimEnd()
    .split('\n');
  const heads = readUtf8(files.get(`${JOB}/heads.ndjson`)!)!
    .trimEnd()
    .split('\n');
  expect([lines.length, heads.length, (told(`${JOB}/checkpoints.json`) as unknown[]).length]).toEqual([2, 1, 1]);
  expect([fits.about(told('about.json')), fits.about.errors]).toEqual([true, null]);
  expect([fits.checkpoints(told(`${JOB}/checkpoints.json`)), fits.devices(told('devices.json'))]).toEqual([true, true]);
  expect([fits.receipt(JSON.parse(lines[0]!)), fits.head(JSON.parse(heads[0]!))]).toEqual([true, true]);
  for (const name of ['plan', 'entry', ...Object.keys(SCHEMAS)]) expect([...files.keys()]).toContain(`schemas/${name}.schema.json`);
});

test('a damaged one is not', () => {
  const about = told('about.json') as Record<string, unknown> & { books: Record<string, unknown>[] };
  expect(fits.about({ ...about, mood: 'good' })).toBe(false);
  expect(fits.about({ ...about, format: 'clampwright-open-export 2' })).toBe(false);
  expect(fits.about({ ...about, books: [{ ...about.books[0], size: -1 }] })).toBe(false);
  expect(fits.about({ ...about, files: { 'devices.json': 'no hash' } })).toBe(false);
  expect(fits.checkpoints([{ note: 'x' }])).toBe(false);
  expect(fits.devices([{ device: 'd-1' }])).toBe(false);
  expect(fits.receipt({ job: JOB, index: 0 })).toBe(false);
  expect(fits.head({ job: JOB, sequence: -1 })).toBe(false);
});

/** The export with one file changed, its hash made to fit: what fuzzing did. */
async function taken(path: string, text: string): Promise<Awaited<ReturnType<typeof openImport>>> {
  const changed = new Map(files);
  changed.set(path, utf8(text));
  const about = told('about.json') as { files: Record<string, string> };
  changed.set('about.json', utf8(JSON.stringify({ ...about, files: { ...about.files, [path]: hashOf(utf8(text)) } })));
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-import-'));
  const store: Store = await openStore({ folder });
  try {
    const found = await openImport(store, async (one) => changed.get(one));
    if (!found.ok) expect(await store.books()).toEqual([]);
    return found;
  } finally {
    await store.close();
    rmSync(folder, { recursive: true });
  }
}

test('a checkpoint without its size, or devices that are none, are refused before anything is written', async () => {
  const whole = JSON.stringify(told(`${JOB}/checkpoints.json`));
  expect(await taken(`${JOB}/checkpoints.json`, whole)).toMatchObject({ ok: true });
  for (const [path, text] of [
    [`${JOB}/checkpoints.json`, whole.replace('"size"', '"sise"')],
    [`${JOB}/checkpoints.json`, '{}'],
    ['devices.json', '[{"device":null}]'],
    ['devices.json', '[1'],
  ] as const)
    expect(await taken(path, text)).toMatchObject({
      ok: false,
      notices: [{ code: 'export-misfit', params: { problem: 'it is damaged' } }],
    });
});
