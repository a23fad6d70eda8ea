import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { idOf, issuePlan, openFold } from '@clampwright/record';
import { atDesk, auditBook, entriesOf } from '@clampwright/server';
import { openStore } from '@clampwright/store';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { planned } from '../../../test/memory-folder.ts';
import { enterCommand } from './enter-command.ts';

const JOB = idOf('job', new Uint8Array(16).fill(7));
const JOINT = idOf('joint', new Uint8Array(16).fill(9));
let folder: string;
let said: string;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'clampwright-enter-'));
  said = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((text) => {
    said += String(text);
    return true;
  });
  vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    said += String(text);
    return true;
  });
  const { job, plan } = planned();
  const ready = { ...plan, joints: plan.joints.map((one) => ({ ...one, verdict: 'ready' as const })) };
  const issue = issuePlan(job, ready, [], {
    number: '1',
    jointId: (tag) => (tag === 'J1' ? JOINT : idOf('joint', new Uint8Array(16).fill(tag.length))),
  });
  const store = await openStore({ folder: join(folder, 'data') });
  const issued = await atDesk(
    store,
    JOB,
    () => new Date('2026-11-20T08:00:00Z'),
    async (desk) => {
      for (const bytes of issue.attachments) await desk.attach(JOB, bytes);
      for (const { kind, body } of issue.entries) await desk.append(JOB, kind, body);
    },
  );
  expect(issued.ok).toBe(true);
  await store.close();
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

const CARD = 'Bolting card 17;;;\njoint;bolts;step;end\nJ1;1-4;first step;ok\nJ1;5;first step;stall\nJ1;6-8;first step;stall\n';
const file = (text: string) => {
  const path = join(folder, 'card-17.csv');
  writeFileSync(path, text);
  return path;
};
const options = { data: '', done: '2026-11-25', card: '17' };
const enter = (text: string, more: object = {}) => enterCommand(JOB, file(text), { ...options, data: join(folder, 'data'), ...more });
async function book() {
  const store = await openStore({ folder: join(folder, 'data') }, { mode: 'reader' });
  const entries = await entriesOf(store, JOB);
  const audit = await auditBook(store, JOB);
  await store.close();
  return { entries, audit };
}

test('a filled card is shown first, entered with --write, marked as entered later, and the book stays whole', async () => {
  const before = (await book()).entries.length;
  expect(await enter(CARD)).toBe(0);
  expect(said).toContain('Nothing is entered yet');
  expect((await book()).entries).toHaveLength(before);
  expect(await enter(CARD, { write: true })).toBe(0);
  const { entries, audit } = await book();
  expect(audit.fault).toBeUndefined();
  const fresh = entries.slice(before);
  expect(fresh.map(({ entry }) => entry.kind)).toEqual(['imported', 'batch-tightened', 'bolt-tightened', 'batch-tightened']);
  expect(fresh[1]!.entry).toMatchObject({
    paper: { done: '2026-11-25', card: '17' },
    body: { joint: JOINT, bolts: [1, 2, 3, 4], step: 'first step', end: 'stall' },
  });
  const fold = openFold();
  for (const one of entries) fold.add(one);
  expect(fold.state('book', 'book').imports).toMatchObject([{ name: 'card-17.csv' }]);
});

test('a fault in one row, and nothing is entered; every fault is said at once', async () => {
  const before = (await book()).entries.length;
  const wrong = `${CARD}J9;1;first step;stall\nJ1;99;first step;stall\nJ1;2;third step;stall\nJ1;2;first step;maybe\n`;
  expect(await enter(wrong, { write: true })).toBe(2);
  for (const text of [
    'No card was issued for a joint “J9”',
    'The joint has no bolt 99',
    'has no step “third step”',
    'This word is not known',
    'row 7',
    'row 9',
  ])
    expect(said).toContain(text);
  expect((await book()).entries).toHaveLength(before);
});

test('the same file is not entered twice', async () => {
  expect(await enter(CARD, { write: true })).toBe(0);
  expect(await enter(CARD, { write: true })).toBe(2);
  expect(said).toContain('was entered into this book before');
});

test('what a heading means is said once: beside the file it is remembered', async () => {
  const odd = CARD.replace('bolts;', 'Bolt Ø;');
  expect(await enter(odd)).toBe(2);
  expect(await enter(odd, { map: ['Bolt Ø=bolt number'] })).toBe(0);
  expect(await enter(odd, { write: true })).toBe(0);
  expect((await book()).entries.at(-1)!.entry).toMatchObject({ kind: 'batch-tightened', body: { bolts: [6, 7, 8] } });
});
