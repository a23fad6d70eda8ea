import { type NoticeCode, planJob } from '@clampwright/core';
import { describe, expect, test } from 'vitest';
import { readJob } from './read-job.ts';

const text = (value: string) => new TextEncoder().encode(value);
const HEAD = 'joint,rule set,layout,bolts,bolt circle [mm],size,grade,system,clamped thickness [mm],lot';
const GOOD = 'J1,en1090-torque,ring,8,600,M24,10.9,HV,48,L1';
const JOB = `title: t
site: s
work-date: 2026-11-25
conditions: { zone: none }
lots:
  - { id: L1, k-class: K2, k: 0.13, variation: 0.03, tested: true, source: test }
`;
const TOOLS = `tools:
  - { serial: T1, name: n, kind: hydraulic, arm: 180 mm, repeatability: 3 %, chart: c.csv, certificate: { number: C1, serial: T1, calibrated: 2026-06-01, due: 2027-05-31, uncertainty: 1 % } }
`;
const CHART = `gear,step,torque [N·m]\n${Array.from({ length: 60 }, (_, i) => `${1 + Math.floor(i / 12)},${1 + (i % 12)},${Math.round(100 * 1.045 ** i)}`).join('\n')}\n`;

interface Files {
  readonly joints?: string | Uint8Array;
  readonly job?: string;
  readonly tools?: string;
  readonly chart?: string;
}

function read({ joints = `${HEAD}\n${GOOD}\n`, job = JOB, tools = TOOLS, chart = CHART }: Files) {
  const files = new Map<string, Uint8Array>([
    ['job.yaml', text(job)],
    ['joints.csv', typeof joints === 'string' ? text(joints) : joints],
    ['tools.yaml', text(tools)],
    ['c.csv', text(chart)],
  ]);
  const found = readJob((path) => files.get(path) ?? 'missing');
  return { ...found, codes: found.notices.map(({ code }) => code as NoticeCode), tags: found.job?.joints.map(({ tag }) => tag) ?? [] };
}
const list = (...rows: string[]) => ({ joints: `${HEAD}\n${rows.join('\n')}\n` });

test('the good job is read without a word', () => {
  const { codes, job } = read({});
  expect(codes).toEqual([]);
  expect(planJob(job!).joints[0]!.subgroups[0]!.tightening!.steps[2]!.setting).toBeDefined();
});

describe('a faulty cell is named with row and column, and the good rows are kept', () => {
  test.each([
    ['zero', '0', 'number-absurd'],
    ['negative', '-600', 'number-absurd'],
    ['not a number', 'abc', 'quantity-wanted'],
    ['NaN', 'NaN', 'quantity-wanted'],
    ['absurd', '99999999', 'number-absurd'],
    ['a formula', '=1+1', 'cell-formula'],
    ['an unknown unit', '600 parsec', 'unit-unknown'],
  ])('%s', (_name, cell, code) => {
    const { notices, tags } = read(list(GOOD, `J2,en1090-torque,ring,8,${cell},M24,10.9,HV,48,L1`));
    const found = notices.find((one) => one.code === code);
    expect(found?.place).toMatchObject({ file: 'joints.csv', row: 3, column: 'bolt circle [mm]' });
    expect(tags).toEqual(['J1']);
  });
  test('every fault of a row at once', () => {
    const { codes } = read(list(GOOD, 'J2,en1090-torque,ring,8,abc,M24,10.9,HV,=A1,L1'));
    expect(codes).toEqual(expect.arrayContaining(['quantity-wanted', 'cell-formula']));
  });
  test('a ragged row is said and left out', () => {
    const { codes, tags } = read(list(GOOD, 'J2,en1090-torque,ring'));
    expect(codes).toContain('row-broken');
    expect(tags).toEqual(['J1']);
  });
  test('an open quotation mark is said', () => {
    expect(read(list(GOOD, '"J2,en1090-torque')).codes).toContain('csv-broken');
  });
});

describe('encodings and separators', () => {
  const german =
    'Verbindung;Verfahren;Anordnung;Anzahl;Lochkreis [mm];Größe;Festigkeitsklasse;Garnitur;Klemmlänge [mm];Los\nFuß 1;en1090-torque;ring;8;600,5;M24;10.9;HV;48,5;L1\n';
  const utf16 = (value: string, little: boolean, bom: boolean) => {
    const units = [...(bom ? '\ufeff' : ''), ...value].map((one) => one.charCodeAt(0));
    return Uint8Array.from(units.flatMap((unit) => (little ? [unit & 255, unit >> 8] : [unit >> 8, unit & 255])));
  };
  const circle = (joints: Uint8Array | string) => {
    const { job, tags } = read({ joints });
    const layout = job?.joints[0]?.layout;
    return { tags, circle: layout?.kind === 'ring' ? layout.circle : undefined };
  };
  test.each([
    ['UTF-8', text(german)],
    ['UTF-8 with BOM', text(`\ufeff${german}`)],
    ['UTF-16 LE with BOM', utf16(german, true, true)],
    ['UTF-16 BE with BOM', utf16(german, false, true)],
    ['UTF-16 LE without BOM', utf16(german, true, false)],
    ['Latin-1', Uint8Array.from([...german].map((one) => one.charCodeAt(0)))],
  ])('%s, semicolons, decimal commas, German headings', (_name, bytes) => {
    expect(circle(bytes)).toEqual({ tags: ['Fuß 1'], circle: 600.5 });
  });
  test('a thousands comma is asked about', () => {
    expect(read(list('J2,en1090-torque,ring,8,"1,234",M24,10.9,HV,48,L1')).codes).toContain('number-ambiguous');
  });
  test('a picture is not a list, and a million rows are refused at once', () => {
    expect(read({ joints: Uint8Array.from([137, 80, 78, 71, 0, 0, 1, 0, 7, 9, 0, 5, 4, 4, 4]) }).codes.length).toBeGreaterThan(0);
    const started = performance.now();
    expect(read({ joints: `${HEAD}\n${`${GOOD}\n`.repeat(1_000_000)}` }).codes).toContain('file-too-large');
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});

describe('headings', () => {
  test('doubled, unknown and missing ones are said', () => {
    expect(read({ joints: `${HEAD},class\n${GOOD},8.8\n` }).codes).toContain('column-twice');
    const unknown = read({ joints: `${HEAD},colour\n${GOOD},blue\n` });
    expect(unknown.codes).toContain('column-ignored');
    expect(unknown.tags).toEqual(['J1']);
    expect(read({ joints: 'joint,rule set,size\nJ1,en1090-torque,M24\n' }).codes).toContain('column-missing');
    expect(read({ joints: 'one,two\n1,2\n' }).codes).toContain('heading-row-missing');
  });
});

describe('YAML', () => {
  test.each([
    ['an unknown key', { job: `${JOB}colour: blue\n` }, 'yaml-unknown-key'],
    ['a date that is none', { job: JOB.replace('2026-11-25', '2026-02-30') }, 'date-unreadable'],
    ['a key twice', { job: `${JOB}title: again\n` }, 'yaml-broken'],
    ['a path out of the folder', { tools: TOOLS.replace('c.csv', '../c.csv') }, 'yaml-wrong-value'],
    ['a quantity without unit', { tools: TOOLS.replace('180 mm', '180') }, 'unit-missing'],
    ['a missing chart', { tools: TOOLS.replace('c.csv', 'd.csv') }, 'file-missing'],
  ] as const)('%s', (_name, files, code) => {
    expect(read(files).codes).toContain(code);
  });
  test('a bomb of aliases is refused', () => {
    const bomb = `a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b,*b]\nd: &d [*c,*c,*c,*c,*c,*c,*c,*c,*c]\ne: [*d,*d,*d,*d,*d,*d,*d]\n${JOB}`;
    expect(read({ job: bomb }).codes).toContain('yaml-broken');
  });
});

describe('charts', () => {
  const planned = (chart: string) => planJob(read({ chart }).job!);
  test('one that is not monotone is named with both cells, and not used', () => {
    const plan = planned(CHART.replace('1,3,109', '1,3,90'));
    expect(plan.tools[0]!.notices.map(({ code }) => code)).toContain('chart-not-monotone');
    expect(plan.joints[0]!.verdict).toBe('stop');
  });
  test('a setting twice, a gap, another serial', () => {
    expect(planned(`${CHART}1,3,109\n`).tools[0]!.notices.map(({ code }) => code)).toContain('chart-setting-twice');
    expect(planned(CHART.replace('1,3,109\n', '')).tools[0]!.notices.map(({ code }) => code)).toContain('chart-gap');
    const other = planJob(read({ tools: TOOLS.replace('serial: T1, calibrated', 'serial: T2, calibrated') }).job!);
    expect(other.tools[0]!.notices.map(({ code }) => code)).toContain('chart-other-serial');
  });
  test('a torque column without unit is not guessed', () => {
    expect(read({ chart: CHART.replace(' [N·m]', '') }).codes).toContain('unit-missing');
  });
});

test('a class that does not exist for the size stops the joint, with its place', () => {
  const { job } = read(list('J1,en1090-torque,ring,8,600,M24,9.8,HV,48,L1'));
  const [joint] = planJob(job!).joints;
  expect(joint!.verdict).toBe('stop');
  expect(joint!.reasons.find(({ code }) => code === 'grade-not-in-size')?.place).toMatchObject({ file: 'joints.csv', row: 2 });
});

describe('batteries', () => {
  const entry = (more: string) => read({ tools: `${TOOLS}batteries:\n  - { serial: P1, volts: 18, ampere-hours: 5${more} }\n` });
  test('are read with what their labels say', () => {
    const { job, codes } = entry(', health: 90 %, temperature: 4, lit: 3, cells: { series: 5, parallel: 2, milliohms: 15 }');
    expect(codes).toEqual([]);
    expect(job!.batteries![0]).toMatchObject({ health: 0.9, lit: 3, cells: { resistance: 0.015 } });
  });
  test.each([
    ['a gauge above full', ', lit: 5'],
    ['negative charge', ', lit: -1'],
    ['an absurd temperature', ', temperature: 900'],
    ['a word no battery has', ', colour: red'],
  ])('%s is named with its line, and the tools are kept', (_, more) => {
    const { job, notices } = entry(more);
    expect(notices[0]!.place).toMatchObject({ file: 'tools.yaml', row: 4 });
    expect(job!.batteries).toEqual([]);
    expect(job!.tools).toHaveLength(1);
  });
  test('a charger in a car that blows its fuse is said before anybody drives', () => {
    expect(read({ tools: `${TOOLS}charger: { watts: 108, vehicle-fuse: 10 }\n` }).codes).toEqual(['socket-fuse']);
    expect(read({ tools: `${TOOLS}charger: { watts: 108, vehicle-fuse: 15 }\n` }).codes).toEqual(['socket-near-fuse']);
  });
});

test('a serial number that the log could not keep is named with its line, and so is a lot', () => {
  const long = 'S'.repeat(121);
  const { notices } = read({ tools: TOOLS.replace(/serial: (\S+?)([,\s])/, `serial: ${long}$2`) });
  expect(notices.find(({ code }) => code === 'label-too-long')).toMatchObject({
    params: { most: 120 },
    place: { file: 'tools.yaml', path: expect.stringContaining('serial') },
  });
});
