import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hashOf, idOf, openFold } from '@clampwright/record';
import { atDesk, auditBook, entriesOf } from '@clampwright/server';
import { openStore } from '@clampwright/store';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { judgeCommand } from './judge-command.ts';
import { registerCommand } from './register-command.ts';

const JOB = idOf('job', new Uint8Array(16).fill(7));
let folder: string;
let said: string;
const data = () => join(folder, 'data');
const tests = () => join(folder, 'demo/tests.yaml');

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'clampwright-tests-'));
  said = '';
  for (const stream of [process.stdout, process.stderr])
    vi.spyOn(stream, 'write').mockImplementation((text) => {
      said += String(text);
      return true;
    });
  cpSync(join(import.meta.dirname, '../../../demo'), join(folder, 'demo'), { recursive: true });
  const store = await openStore({ folder: data() });
  const now = () => new Date('2026-11-20T08:00:00Z');
  await atDesk(store, JOB, now, (desk) => desk.append(JOB, 'note-written', { text: 'the book begins' }));
  await store.close();
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

const judge = (file: string, more: object = {}) =>
  judgeCommand(file, { data: data(), book: JOB, done: '2026-11-24', write: true, ...more });
const register = () => registerCommand(join(folder, 'demo'), { data: data(), write: true });
async function book() {
  const store = await openStore({ folder: data() }, { mode: 'reader' });
  const entries = await entriesOf(store, JOB);
  const { fault } = await auditBook(store, JOB);
  const files = (await store.attachments.list(JOB)).map(({ hash }) => hash);
  await store.close();
  const fold = openFold();
  for (const one of entries) fold.add(one);
  return { entries: entries.slice(1), fold, fault, files };
}

test('tests of lots and checks of tools are shown first, then entered with their day and the file beside them', async () => {
  await register();
  // the small wrench of the demo fails its check: 1 as without a book
  expect(await judge(tests(), { write: false })).toBe(1);
  expect(said).toContain('lot HV24-611, M24 10.9 HV: not in this book yet');
  expect(said).toMatch(/check of tool SK-B117, setting for 346\sN·m: not passed/);
  expect(said).toContain('series whose verdict is entered with the file: 1');
  expect((await book()).entries).toEqual([]);
  expect(await judge(tests())).toBe(1);
  const { entries, fold, fault, files } = await book();
  expect(fault).toBeUndefined();
  expect(entries.map(({ entry }) => entry.kind)).toEqual([
    'imported',
    'lot-registered',
    'suitability-tested',
    'tool-checked',
    'tool-checked',
  ]);
  const hash = hashOf(new Uint8Array(readFileSync(tests())));
  expect(files).toEqual([hash]);
  const [lot] = fold.ids('lot');
  expect(fold.state('lot', lot!)).toMatchObject({
    name: 'HV24-611',
    tests: [{ passed: true, report: hash, mention: { on: '2026-11-24' } }],
  });
  // (821 + 834 + 826)/3 and (361 + 368 + 364)/3 N·m, by hand
  expect(fold.state('tool', 'SK-B204').checks).toMatchObject([{ passed: true, readingNewtonMillimetre: 827_000 }]);
  expect(fold.state('tool', 'SK-B117').checks).toMatchObject([{ passed: false, readingNewtonMillimetre: 364_333 }]);
});

test('a battery log alone is entered as what it is: the file, and what it says of the next charge', async () => {
  const file = join(folder, 'charges.csv');
  writeFileSync(file, `serial number,bolts\n${[142, 138, 150, 145, 133].map((bolts) => `SK-P1,${bolts}`).join('\n')}\n`);
  expect(await judge(file)).toBe(0);
  const { entries, files } = await book();
  expect(entries.map(({ entry }) => entry.kind)).toEqual(['imported']);
  expect(files).toEqual([hashOf(new Uint8Array(readFileSync(file)))]);
  // x̄ − t·s·√(1 + 1/n) of these five counts, by hand: 126.4
  expect(entries[0]!.entry.body.text).toContain('at least 126 bolts');
});

test('the same file is not entered twice; a later test of a lot finds the lot', async () => {
  await register();
  await judge(tests());
  const before = (await book()).entries.length;
  expect(await judge(tests())).toBe(2);
  expect(said).toContain('was entered into this book before');
  expect((await book()).entries).toHaveLength(before);
  writeFileSync(join(folder, 'again.yaml'), 'verification:\n  - { lot: HV24-611, minimum: 247 kN, tensions: [262 kN, 265 kN, 261 kN] }\n');
  await judge(join(folder, 'again.yaml'));
  const { fold } = await book();
  expect(fold.ids('lot')).toHaveLength(1);
  expect(fold.state('lot', fold.ids('lot')[0]!).tests).toHaveLength(2);
});

test('a tool or a lot that nobody registered, a missing day and an unknown book: nothing is entered', async () => {
  const file = join(folder, 'unknown.yaml');
  writeFileSync(
    file,
    `verification:
  - { lot: A325-9, minimum: 100 kN, tensions: [110 kN, 111 kN, 112 kN] }
shots:
  - { tool: SK-X1, expected: 800 N·m, limit: 4 %, readings: [801 N·m, 802 N·m, 799 N·m] }
`,
  );
  expect(await judge(file)).toBe(2);
  expect(said).toContain('Lot A325-9 is not registered');
  expect(said).toContain('Tool SK-X1 is registered neither');
  expect(await judge(file, { done: undefined })).toBe(2);
  expect(await judge(file, { done: '24.11.2026' })).toBe(2);
  expect(await judge(file, { book: idOf('job', new Uint8Array(16).fill(8)) })).toBe(2);
  expect((await book()).entries).toEqual([]);
});

test('what a heading means is said once: a table whose heading is not known is judged, and judged again without it', async () => {
  const row = (torque: number) => `L9;M24;10.9;HV;247;56;${torque};331;152;262\n`;
  const table = `Parcel;size;grade;system;preload [kN];clamped thickness [mm];torque [N·m];greatest force [kN];first rotation [°];second rotation [°]\n`;
  const file = join(folder, 'series.csv');
  writeFileSync(file, table + [742, 771, 764, 738, 779].map(row).join(''));
  const only = { data: data() };
  expect(await judgeCommand(file, only)).toBe(1);
  said = '';
  expect(await judgeCommand(file, { ...only, map: ['Parcel=lot'] })).toBe(0);
  expect(said).toContain('lot L9: K2');
  expect(readFileSync(join(folder, 'mapping.yaml'), 'utf8')).toContain('suitability');
  expect(await judgeCommand(file, only)).toBe(0);
  expect(await judgeCommand(file, { ...only, map: ['Nowhere=lot'] })).toBe(1);
  expect(await judgeCommand(file, { ...only, map: ['lot'] })).toBe(2);
});
