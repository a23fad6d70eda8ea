import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hashOf, openFold } from '@clampwright/record';
import { atDesk, auditBook, entriesOf, findYard } from '@clampwright/server';
import { openStore } from '@clampwright/store';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { registerCommand } from './register-command.ts';

let folder: string;
let said: string;
const data = () => join(folder, 'data');
const demo = () => join(folder, 'demo');

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'clampwright-register-'));
  said = '';
  for (const stream of [process.stdout, process.stderr])
    vi.spyOn(stream, 'write').mockImplementation((text) => {
      said += String(text);
      return true;
    });
  cpSync(join(import.meta.dirname, '../../../demo'), demo(), { recursive: true });
  await (await openStore({ folder: data() })).close();
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

const register = (write = true) => registerCommand(demo(), { data: data(), write });
const change = (from: string, to: string) => {
  const file = join(demo(), 'tools.yaml');
  const text = readFileSync(file, 'utf8');
  expect(text).toContain(from);
  writeFileSync(file, text.replace(from, to));
};
async function yardBook() {
  const store = await openStore({ folder: data() }, { mode: 'reader' });
  const yard = await findYard(store);
  const entries = yard ? await entriesOf(store, yard.id) : [];
  const fault = yard && entries.length > 0 ? (await auditBook(store, yard.id)).fault : undefined;
  const files = yard ? (await store.attachments.list(yard.id)).map(({ hash }) => hash) : [];
  await store.close();
  const fold = openFold();
  for (const one of entries) fold.add(one);
  return { entries, fold, fault, files };
}
const kinds = (entries: Awaited<ReturnType<typeof yardBook>>['entries']) => entries.map(({ entry }) => entry.kind);

test('tools and batteries are shown first, then registered with their charts as attachments', async () => {
  expect(await register(false)).toBe(0);
  expect(said).toContain('SK-C-2041');
  expect(said).toContain('Nothing is entered yet');
  expect((await yardBook()).entries).toEqual([]);
  expect(await register()).toBe(0);
  const { entries, fold, fault, files } = await yardBook();
  expect(fault).toBeUndefined();
  expect(kinds(entries)).toEqual([...Array(6).fill(['tool-registered', 'chart-loaded']).flat(), ...Array(3).fill('battery-registered')]);
  const chart = hashOf(new Uint8Array(readFileSync(join(demo(), 'charts/SK-B204.csv'))));
  expect(fold.state('tool', 'SK-B204')).toMatchObject({ certificate: 'SK-C-2041', due: '2027-06-07', chart, withdrawn: false });
  expect(files).toContain(chart);
  const { sheet } = fold.state('tool', 'SK-B204');
  expect(files).toContain(sheet);
  expect(fold.state('battery', 'SK-P1').name).toBe('18 V, 8 A·h');
});

test('a second run registers nothing; one with a new certificate and its picture registers these alone', async () => {
  await register();
  const before = (await yardBook()).entries.length;
  said = '';
  expect(await register()).toBe(0);
  expect(said).toContain('says all this already');
  expect((await yardBook()).entries).toHaveLength(before);
  change(
    'number: SK-C-1172, serial: SK-B117, calibrated: 2026-09-14',
    'number: SK-C-1190, photo: c.jpg, serial: SK-B117, calibrated: 2026-11-02',
  );
  writeFileSync(join(demo(), 'c.jpg'), 'a picture');
  expect(await register()).toBe(0);
  const { entries, files, fault } = await yardBook();
  expect(fault).toBeUndefined();
  expect(kinds(entries.slice(before))).toEqual(['tool-registered', 'chart-loaded', 'imported']);
  const photo = hashOf(new TextEncoder().encode('a picture'));
  expect(entries.at(-1)!.entry.body).toMatchObject({ file: photo, name: 'c.jpg', text: 'certificate SK-C-1190 of tool SK-B117' });
  expect(files).toContain(photo);
});

test('a tool that was withdrawn does not come back because a folder still lists it', async () => {
  await register();
  const store = await openStore({ folder: data() });
  const { id } = (await findYard(store))!;
  const now = () => new Date();
  await atDesk(store, id, now, (desk) => desk.append(id, 'tool-withdrawn', { tool: 'SK-H031', reason: 'dropped' }));
  await store.close();
  said = '';
  expect(await register()).toBe(0);
  expect(said).toContain('says all this already');
  expect((await yardBook()).fold.state('tool', 'SK-H031').withdrawn).toBe(true);
});

test('a faulty list registers nothing', async () => {
  change('uncertainty: 1 %, joint-rate: hard', 'uncertainty: 1 %, photo: nowhere.jpg');
  expect(await register()).toBe(2);
  expect(said).toContain('nowhere.jpg is not there');
  expect((await yardBook()).entries).toEqual([]);
});
