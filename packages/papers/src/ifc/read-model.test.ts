import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bytesOf, read, SOUND } from '../../../../test/memory-folder.ts';
import * as entities from './entities.ts';
import { modelJointList, readModel } from './index.ts';

// Files written by hand to the standards' text: fixtures/ifc/make.py.
const fixture = (name: string) => new Uint8Array(readFileSync(new URL(`../../fixtures/ifc/${name}.ifc`, import.meta.url)));
async function model(name: string) {
  const found = await readModel(fixture(name), `${name}.ifc`);
  if (!found.ok) throw new Error(found.notices.map(({ code }) => code).join());
  return found.value;
}

test('the entities are those of the parser', async () => {
  const parser = new Map<string, unknown>(Object.entries(await import('web-ifc')));
  for (const [name, code] of Object.entries(entities)) expect(code).toBe(parser.get(name));
});

test('IFC 4 in millimetres: a splice in a turned part of a turned site, grip from its two plates', async () => {
  const { joints, notices } = await model('splice-ifc4-mm');
  expect(notices).toEqual([]);
  const [joint] = joints;
  expect(joint).toMatchObject({ held: 'connection', connects: ['Web B1', 'Plate P1'], grip: { known: true, value: 22 } });
  expect(joint!.layout).toMatchObject({ kind: 'grid', rows: 2, columns: 3, along: 70, across: 60 });
  // by hand: the site turns x to y and y to −x; the part's x is the site's y, its y the site's z, its z the site's x
  const spots = joint!.bolts.map(({ at }) => at.map(Math.round).join(' ')).sort();
  expect(spots).toEqual([70, 140, 210].flatMap((x) => [60, 120].map((y) => `${1000 - x} 2110 ${3000 + y}`)).sort());
  expect(joint!.bolts[0]).toMatchObject({ size: 'M20', length: 50, grade: '10.9', standard: 'EN 14399-4', system: 'HV' });
});

test('IFC 2x3 in inches: studs nested in an assembly, square to (1, 1, 1), on the circle that was drawn', async () => {
  const { joints, unit } = await model('flange-ifc2x3-inch');
  expect(unit).toBeCloseTo(25.4, 9);
  expect(joints).toHaveLength(1);
  expect(joints[0]).toMatchObject({ tag: 'PH-F9', held: 'nest', layout: { kind: 'ring' } });
  expect(joints[0]!.layout).toHaveProperty('circle');
  expect((joints[0]!.layout as { circle: number }).circle).toBeCloseTo(9.5 * 25.4, 3);
  const [stud] = joints[0]!.bolts;
  expect(stud).toMatchObject({ size: '3/4"', grade: 'A193 B7' });
  expect(stud!.length).toBeCloseTo(4.25 * 25.4, 9);
  for (const one of stud!.axis) expect(one).toBeCloseTo(1 / Math.sqrt(3), 9);
});

test('IFC 4.3 in metres: one fastener that shows four bolts; what contradicts itself is left open, what is no bolt left out', async () => {
  const { joints, notices } = await model('asked-ifc4x3-m');
  const four = joints.find(({ bolts }) => bolts.length === 4)!;
  expect(four.bolts.map(({ at }) => at.map((one) => Math.round(one)))).toContainEqual([10_100, 5_350, 530]);
  expect(four.layout).toMatchObject({ kind: 'grid', along: 200, across: 300 });
  expect(four.bolts[0]).toMatchObject({ size: 'M30', length: 400 });
  const about = (id: string) => notices.filter(({ place }) => place?.path?.startsWith(id)).map(({ code }) => code);
  expect(about('#32')).toEqual(['fastener-count']);
  expect(about('#39')).toEqual(['fastener-contradicts']);
  expect(about('#43')).toEqual(['fastener-no-bolt']);
  expect(about('#47')).toEqual(['fastener-no-bolt']);
  expect(about('#48')).toEqual(['fastener-without-place']);
  expect(about('#52')).toEqual(['fastener-without-size']);
  expect(about('#56')).toEqual(['fastener-without-place']);
});

test('the list that is written reads back as the joints that were seen, and plans', async () => {
  const { joints } = await model('splice-ifc4-mm');
  const { job, notices } = read({
    'job.yaml': `${String(SOUND['job.yaml'])}rule-set: en1090-torque\n`,
    'joints.csv': modelJointList(joints),
  });
  expect(notices).toEqual([]);
  expect(job!.joints[0]).toMatchObject({
    tag: 'Web B1 / Plate P1',
    subgroups: [{ size: 'M20', grade: '10.9', length: 50, clampThickness: 22, system: 'HV' }],
  });
  expect(job!.joints[0]!.layout).toMatchObject({ kind: 'group', bolts: { length: 6, 4: { x: 70, y: 60 } } });
});

test('bolts at uneven places come through with their places', async () => {
  const uneven = Buffer.from(fixture('splice-ifc4-mm'))
    .toString()
    .replace(/\(\(70\.,60\.,10\.\)\)/, '((55.,60.,10.))');
  const found = await readModel(bytesOf(uneven), 'a.ifc');
  if (!found.ok) throw new Error('not read');
  expect(found.value.joints[0]!.layout.kind).toBe('spots');
  const { job, notices } = read({
    'job.yaml': `${String(SOUND['job.yaml'])}rule-set: en1090-torque\n`,
    'joints.csv': modelJointList(found.value.joints),
  });
  expect(notices).toEqual([]);
  expect(job!.joints[0]!.subgroups).toHaveLength(1);
  expect(job!.joints[0]!.layout).toMatchObject({ kind: 'group', bolts: { length: 6 } });
});

test.each([
  ['model-not-step', 'hello'],
  ['model-packed', 'PK\u0003\u0004'],
  ['model-schema', "ISO-10303-21;\nHEADER;\nFILE_SCHEMA(('IFC1X5'));"],
])('%s', async (code, text) => {
  const found = await readModel(bytesOf(text), 'a.ifc');
  expect(found.ok ? [] : found.notices.map((one) => one.code)).toEqual([code]);
});
