import { planJob } from '@clampwright/core';
import { expect, test } from 'vitest';
import { readJob } from './read-job.ts';

const text = (value: string) => new TextEncoder().encode(value);
const JOB = `title: t
site: s
work-date: 2026-11-25
conditions: { zone: none }
lots:
  - { id: L1, suitability-test: tests.yaml }
`;
const JOINTS =
  'joint,rule set,layout,bolts,bolt circle [mm],size,grade,system,clamped thickness [mm],lot\nJ1,en1090-torque,ring,8,600,M24,10.9,HV,48,L1\n';
const TOOLS = `tools:
  - { serial: T1, name: n, kind: hydraulic, arm: 180 mm, repeatability: 3 %, chart: c.csv, certificate: { number: C1, serial: T1, calibrated: 2026-06-01, due: 2027-05-31, uncertainty: 1 % } }
`;
const CHART = `gear,step,torque [N·m]\n${Array.from({ length: 60 }, (_, i) => `${1 + Math.floor(i / 12)},${1 + (i % 12)},${Math.round(100 * 1.045 ** i)}`).join('\n')}\n`;
const series = (...torques: number[]) =>
  `suitability:\n  - { lot: L1, size: M24, grade: "10.9", system: HV, preload: 247 kN, clamped-thickness: 48 mm, assemblies: [${torques.map((torque) => `{ torque: ${torque} N·m, greatest-force: 330 kN, first-rotation: 150°, second-rotation: 260° }`).join(', ')}] }\n`;

function read(tests: string | undefined, job = JOB) {
  const files = new Map(
    Object.entries({ 'job.yaml': job, 'joints.csv': JOINTS, 'tools.yaml': TOOLS, 'c.csv': CHART }).map(([name, value]) => [
      name,
      text(value),
    ]),
  );
  if (tests !== undefined) files.set('tests.yaml', text(tests));
  const found = readJob((path) => files.get(path) ?? 'missing');
  return { ...found, codes: found.notices.map(({ code }) => code), verdict: planJob(found.job!).joints[0]!.verdict };
}

test('a lot is what its own series say: class, k and scatter', () => {
  const { job, codes, verdict } = read(series(742, 771, 764, 738, 779));
  expect(codes).toEqual([]);
  expect(job!.lots[0]).toMatchObject({ kClass: 'K2', tested: true, failed: false });
  expect(verdict).not.toBe('stop');
});
test('a failed test blocks the joints of its lot', () => {
  const { job, codes, verdict } = read(series(742, 771, 764, 738, 779).replace('330 kN', '300 kN'));
  expect(codes).toContain('lot-force-low');
  expect(job!.lots[0]!.failed).toBe(true);
  expect(verdict).toBe('stop');
});
test('a series that scatters too much closes the torque method', () => expect(read(series(650, 820, 764, 690, 860)).verdict).toBe('stop'));
test.each<[string, string | undefined, string]>([
  ['a file that is not there', undefined, 'file-missing'],
  ['a file without this lot', series(742, 771, 764, 738, 779).replace('lot: L1', 'lot: L2'), 'lot-test-missing'],
  ['two points', series(742, 771), 'lot-test-few'],
])('%s is said and blocks', (_, tests, code) => {
  const { codes, verdict } = read(tests);
  expect(codes).toContain(code);
  expect(verdict).toBe('stop');
});
test('friction that is entered beside a test is said', () => {
  const both = JOB.replace('suitability-test', 'k: 0.14, tested: true, source: s, suitability-test');
  expect(read(series(742, 771, 764, 738, 779), both).codes).toContain('lot-friction-twice');
});
