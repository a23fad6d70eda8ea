import { describe, expect, test } from 'vitest';
import { readJob } from './read-job.ts';

const text = (value: string) => new TextEncoder().encode(value);
const JOB = `title: t
site: s
work-date: 2026-11-25
conditions: { zone: none }
lots:
  - { id: L1, k: 0.17, tested: true, source: test }
`;
const TOOLS = `tools:
  - { serial: T1, name: n, kind: hydraulic, repeatability: 3 %, chart: c.csv, certificate: { number: C1, serial: T1, calibrated: 2026-06-01, due: 2027-05-31, uncertainty: 1 % } }
`;
const CHART = `step,torque [N·m]\n${Array.from({ length: 40 }, (_, i) => `${i + 1},${Math.round(40 * 1.06 ** i)}`).join('\n')}\n`;
const JOINTS = `joint,rule set,flange,layout,bolts,bolt circle [mm],size,grade,lot,bolt stress [MPa],permit
F1,flange-bolt-stress,EN 1092-1 DN100 PN16,,,,,8.8,L1,290,P1
R1,flange-bolt-stress,,ring,4,300,M20,8.8,L1,290,P1
`;

function read(members: string | undefined, more: Readonly<Record<string, string>> = {}) {
  const files = new Map(
    Object.entries({ 'job.yaml': JOB, 'joints.csv': JOINTS, 'tools.yaml': TOOLS, 'c.csv': CHART, ...more }).map(([name, value]) => [
      name,
      text(value),
    ]),
  );
  if (members !== undefined) files.set('members.yaml', text(members));
  const { job, notices } = readJob((path) => files.get(path) ?? 'missing');
  return {
    joints: job?.joints ?? [],
    of: (tag: string) => job?.joints.find((joint) => joint.tag === tag)?.members,
    codes: notices.map(({ code }) => code),
    notices,
  };
}

test('a folder without members.yaml has joints whose members are not known, and nothing is said', () => {
  const { codes, of } = read(undefined);
  expect(codes).toEqual([]);
  expect(of('F1')).toBeUndefined();
});

test('a standard flange needs only its gasket; units are read as written', () => {
  const { codes, of } = read(
    'members:\n  - { joints: [F1], gasket: { kind: fibre sheet, thickness: 0.0787 in, modulus: 0.6 GPa, least-stress: 30 MPa, greatest-stress: 80 MPa } }\n',
  );
  expect(codes).toEqual([]);
  const members = of('F1') as {
    readonly kind: string;
    readonly gasket: { readonly thickness: number; readonly modulus: number; readonly greatestStress: number };
  };
  expect(members.kind).toBe('standard flange');
  expect(members.gasket.thickness).toBeCloseTo(2, 2);
  expect(members.gasket.modulus).toBe(600);
  expect(members.gasket.greatestStress).toBe(80);
});

describe('every fault has its code and place, and no joint is lost', () => {
  test.each([
    ['a joint that is not in the list', 'members:\n  - { joints: [F9], gasket: { kind: rubber } }\n', 'members-joint-unknown'],
    [
      'a joint that is said twice',
      'members:\n  - { joints: [F1], gasket: { kind: rubber } }\n  - { joints: [F1], gasket: { kind: rubber } }\n',
      'members-twice',
    ],
    ['a gasket without a flange', 'members:\n  - { joints: [R1], gasket: { kind: rubber } }\n', 'members-no-flange'],
    [
      'two kinds at once',
      'members:\n  - joints: [R1]\n    matrix: m.csv\n    ring: { inner: 219 mm, outer: 340 mm, thickness: 24 mm, wall: 6 mm, wall-side: inside }\n',
      'yaml-wrong-value',
    ],
    ['an unknown word', 'members:\n  - { joints: [F1], gasket: { kind: rubber, colour: red } }\n', 'yaml-unknown-key'],
    ['a kind that is none', 'members:\n  - { joints: [F1], gasket: { kind: cheese } }\n', 'yaml-wrong-value'],
    ['no unit', 'members:\n  - { joints: [F1], gasket: { kind: rubber, thickness: thick } }\n', 'quantity-wanted'],
    ['no YAML', 'members: [\n', 'yaml-broken'],
  ])('%s', (_, members, wanted) => {
    const { codes, joints, notices } = read(members);
    expect(joints).toHaveLength(2);
    expect(codes).toContain(wanted);
    for (const { place } of notices) expect(place?.file).toBe('members.yaml');
  });
  test('an aliased bomb', () => {
    const bomb = `a: &a [x,x,x,x,x,x,x,x,x]\n${'bcdefghij'
      .split('')
      .map((name, i) => `${name}: &${name} [${Array.from({ length: 9 }, () => `*${'abcdefghij'[i]}`).join()}]`)
      .join('\n')}\nmembers: []\n`;
    expect(read(bomb).codes.length).toBeGreaterThan(0);
  });
});

describe('a matrix from a file', () => {
  const members = 'members:\n  - { joints: [R1], matrix: m.csv }\n';
  const rows = ['2e-6,1e-6,5e-7,1e-6', '1e-6,2e-6,1e-6,5e-7', '5e-7,1e-6,2e-6,1e-6', '1e-6,5e-7,1e-6,2e-6'];
  test('is read with commas, or with semicolons and decimal commas', () => {
    const comma = read(members, { 'm.csv': `${rows.join('\n')}\n` });
    const semicolon = read(members, {
      'm.csv': `${rows.map((row) => row.replaceAll(',', ';').replaceAll('e-6', ',0e-6').replaceAll('e-7', ',0e-7')).join('\n')}\n`,
    });
    expect(comma.codes).toEqual([]);
    expect(semicolon.of('R1')).toEqual(comma.of('R1'));
  });
  test('a cell that is no figure is named with row and column', () => {
    const { notices, of } = read(members, { 'm.csv': `${rows.join('\n').replace('5e-7', 'stiff')}\n` });
    expect(notices[0]).toMatchObject({ code: 'number-wanted', place: { file: 'm.csv', row: 1, column: '3', read: 'stiff' } });
    expect(of('R1')).toBeUndefined();
  });
  test('a path that leaves the folder, or a file that is not there', () => {
    for (const path of ['../m.csv', '/etc/passwd', 'none.csv']) {
      const { codes, of } = read(members.replace('m.csv', path));
      expect(codes.length).toBeGreaterThan(0);
      expect(of('R1')).toBeUndefined();
    }
  });
});
