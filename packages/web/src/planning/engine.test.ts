import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { planInteraction, planJob } from '@clampwright/core';
import { readJob } from '@clampwright/papers/read';
import { expect, test } from 'vitest';
import { openEngine } from './engine.ts';

const demo = (): [string, Uint8Array][] =>
  readdirSync('demo', { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile() && !one.parentPath.includes('plan'))
    .map(({ parentPath, name }) => join(parentPath, name))
    .map((path) => [path.slice('demo/'.length), new Uint8Array(readFileSync(path))]);
const list = (change: (text: string) => string): [string, Uint8Array] => [
  'joints.csv',
  new TextEncoder().encode(change(readFileSync('demo/joints.csv', 'utf8'))),
];

test('the engine plans the demo as the command line does, rounds and all, and forgets nothing between edits', async () => {
  const engine = openEngine();
  const first = engine.plan(demo(), []);
  expect(first.roundsOpen).toBeGreaterThan(0);
  const views: number[] = [];
  await engine.rounds((view) => void views.push(view.roundsOpen));
  expect(views.at(-1)).toBe(0);
  const files = new Map(demo());
  const job = readJob((path) => files.get(path) ?? 'missing').job!;
  expect((await engine.whole())!.plan).toEqual(planInteraction(job, planJob(job)));
  // another title is another joint of the same kind: its rounds are known
  const again = engine.plan([list((text) => text.replace('suction line', 'suction pipe'))], []);
  expect(again.roundsOpen).toBe(0);
  expect(again.rows.find(({ tag }) => tag === 'PH-F1')?.title).toContain('suction pipe');
});

test('a way out is offered only where planning so leaves no stop', () => {
  const engine = openEngine();
  const view = engine.plan(demo(), []);
  const expired = view.toMend.find(({ tags, level }) => level === 'stop' && tags.includes('PH-F2'))!;
  const ways = engine.ways(expired.notices[0]!.code, expired.tags);
  expect(ways.length).toBeGreaterThan(0);
  for (const way of ways) {
    if (way.kind !== 'tool') continue;
    const swapped = openEngine().plan([...demo(), list((text) => text.replace('SK-P019', way.serial))], []);
    expect(swapped.rows.find(({ tag }) => tag === 'PH-F2')?.verdict).not.toBe('stop');
  }
  // another method, but none that asks for other bolts or washers than lie there
  const untested = view.toMend.find(({ tags, level }) => level === 'hold' && tags.includes('FB-S2'))!;
  const methods = engine.ways(untested.notices[0]!.code, untested.tags).map((way) => (way.kind === 'rule' ? way.rule : way.serial));
  expect(methods.filter((one) => /hrc|dti/.test(one))).toEqual([]);
  // no tool of the yard is large enough for the reduced preload with a battery wrench: the hydraulic one is
  const small = view.toMend.find(({ tags, level }) => level === 'stop' && tags.includes('TB-R2'))!;
  expect(engine.ways(small.notices[0]!.code, small.tags).map((way) => way.kind === 'tool' && way.serial)).toContain('SK-H031');
});

test('a comparison names what changed and nothing else', async () => {
  const engine = openEngine();
  engine.plan(demo(), []);
  const before = new TextEncoder().encode(JSON.stringify((await engine.whole())!.plan));
  expect(await engine.compare(before)).toEqual([]);
  engine.plan([list((text) => text.replace(/^FB-S2.*\n/m, '').replace(/^(FB-S1.*)SK-B204$/m, '$1SK-H031'))], []);
  const changes = (await engine.compare(before))!;
  expect(changes.map(({ tag, kind }) => [tag, kind])).toEqual([
    ['FB-S1', 'changed'],
    ['FB-S2', 'gone'],
  ]);
  expect(changes[0]!.lines).toContainEqual({ what: 'tool', before: 'SK-B204', after: 'SK-H031' });
  expect(changes[0]!.lines.map(({ what }) => what)).not.toContain('bolts');
}, 30_000);

test('a list is looked at before it is taken: meanings, joints, what is said, and what a person tells of a heading', () => {
  const engine = openEngine();
  const csv = new TextEncoder().encode('Joint;Ø;grade;bolts;layout;weight\nA;M20;10.9;4;2x2;3\n');
  const read = engine.list(csv, 'list.csv', [], [])!;
  expect(read.joints).toEqual([]);
  expect(read.notices.map(({ code }) => code)).toContain('column-unclear');
  const told = engine.list(
    csv,
    'list.csv',
    [
      { heading: 'Ø', means: 'size' },
      { heading: 'weight', means: 'ignore' },
    ],
    [],
  )!;
  expect(told.joints).toEqual([{ tag: 'A', bolts: 4 }]);
  expect(told.head?.columns.map(({ field }) => field)).toEqual(['tag', 'size', 'grade', 'bolts', 'layout', undefined]);
  expect(told.mapping).toContain('size');
  // what was said once holds for a list with the same headings in any draft, and goes with it
  const remembered = [new TextEncoder().encode('tables: []\n'), new TextEncoder().encode(told.mapping!)];
  const again = engine.list(csv, 'again.csv', [], remembered);
  expect(again.joints).toEqual([{ tag: 'A', bolts: 4 }]);
  expect(again.mapping).toContain('size');
  const other = new TextEncoder().encode('Joint;Ø;grade;bolts;layout;length\nA;M20;10.9;4;2x2;60\n');
  expect(engine.list(other, 'other.csv', [], remembered).notices.map(({ code }) => code)).toContain('column-unclear');
});
