import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { idOf, openFold } from '@clampwright/record';
import { atDesk, entriesOf } from '@clampwright/server';
import { openStore } from '@clampwright/store';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { openExportCommand, openImportCommand } from './open-export-command.ts';

const JOB = idOf('job', new Uint8Array(16).fill(3));
const YARD = idOf('yard', new Uint8Array(16).fill(4));
let folder: string;
const at = (name: string) => join(folder, name);
let said = '';

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'clampwright-export-'));
  said = '';
  for (const stream of [process.stdout, process.stderr])
    vi.spyOn(stream, 'write').mockImplementation((text) => {
      said += String(text);
      return true;
    });
  const store = await openStore({ folder: at('data') });
  await store.access.put('server', 'yard', 'yard', { id: YARD, name: 'Skerrow Sound' });
  const now = () => new Date('2026-11-25T08:00:00Z');
  await atDesk(store, YARD, now, async (desk) => {
    const chart = await desk.attach(YARD, new TextEncoder().encode('scale,torque [N·m]\n1,100\n'));
    await desk.append(YARD, 'tool-registered', {
      tool: 'SK-1',
      name: 'wrench',
      kind: 'click wrench',
      chart,
      certificate: 'C-1',
      due: '2027-05-31',
    });
  });
  await atDesk(store, JOB, now, async (desk) => {
    const photo = await desk.attach(
      JOB,
      Uint8Array.from({ length: 300_000 }, (_, i) => i % 251),
    );
    await desk.append(JOB, 'photo-taken', { photo, type: 'image/jpeg' });
    for (let i = 0; i < 1200; i += 1) await desk.append(JOB, 'note-written', { text: `note ${i}` });
  });
  await store.close();
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

const filesOf = (root: string) =>
  readdirSync(root, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length))
    .sort()
    .map((path) => [path, readFileSync(join(root, path)).toString('base64')] as const);

async function stateOf(data: string) {
  const store = await openStore({ folder: data }, { mode: 'reader' });
  const fold = openFold();
  for (const one of await entriesOf(store, JOB)) fold.add(one);
  const state = { book: fold.state('book', 'book'), size: fold.size(), attachments: await store.attachments.list(JOB) };
  await store.close();
  return state;
}

test('an open export taken over into another store is exported again byte for byte, and folds to the same state', async () => {
  expect(await openExportCommand(JOB, { data: at('data'), out: at('one') })).toBe(0);
  expect(await openImportCommand(at('one'), { data: at('other') })).toBe(0);
  expect(await openExportCommand(JOB, { data: at('other'), out: at('two') })).toBe(0);
  expect(filesOf(at('two'))).toEqual(filesOf(at('one')));
  expect(await stateOf(at('other'))).toEqual(await stateOf(at('data')));
  const paths = filesOf(at('one')).map(([path]) => path);
  expect(paths).toContain(`/${YARD}/entries.ndjson`);
  expect(paths).toContain('/schemas/entry-bolt-tightened-1.schema.json');
});

test('a changed, missing or second file keeps everything out', async () => {
  await openExportCommand(JOB, { data: at('data'), out: at('one') });
  const path = at(`one/${JOB}/entries.ndjson`);
  const whole = readFileSync(path, 'utf8');
  writeFileSync(path, whole.replace('note 7"', 'note 8"'));
  expect(await openImportCommand(at('one'), { data: at('other') })).toBe(2);
  expect(said).toContain('it was changed');
  rmSync(path);
  expect(await openImportCommand(at('one'), { data: at('other') })).toBe(2);
  expect(said).toContain('it is missing');
  writeFileSync(path, whole);
  expect(await openImportCommand(at('one'), { data: at('other') })).toBe(0);
  expect(await openImportCommand(at('one'), { data: at('other') })).toBe(2);
  expect(said).toContain('in this store already');
  expect(await openExportCommand(JOB, { data: at('data'), out: at('one') })).toBe(2);
});
