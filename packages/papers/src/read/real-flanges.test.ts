import { readFileSync } from 'node:fs';
import { inch, inLbfFt, inPsi, ksi, MPa } from '@clampwright/core';
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { jointOf, planned, SOUND } from '../../../../test/memory-folder.ts';

interface Row {
  readonly NPS: string;
  readonly class: string;
  readonly bolt_count: string;
  readonly bolt_size_in: string;
  readonly bolt_circle_in: string;
}

// ASME B16.5-2009 and B16.47 Series A, as published: packages/reference/rows/flange-b16.5.csv names the source of each line
const rows = parse(readFileSync(new URL('../../../reference/rows/flange-b16.5.csv', import.meta.url)), { columns: true }) as Row[];
const isLarge = ({ NPS }: Row) => Number(NPS) >= 26;
const tagOf = (row: Row) => `NPS ${row.NPS} CL ${row.class}`;
const nameOf = (row: Row) => `${isLarge(row) ? 'B16.47A' : 'B16.5'} NPS ${row.NPS} Class ${row.class}`;

const HEAD = 'joint,rule set,flange,grade,lot,bolt stress,bolt 1,direction,seen from,permit';
const line = (row: Row, stress: string) =>
  `${tagOf(row)},flange-bolt-stress,${nameOf(row)},A193 B7,STUDS,${stress},top,clockwise,pump side,P-1`;
const list = (stress: string) => `${HEAD}\n${rows.map((row) => line(row, stress)).join('\n')}\n`;

const inches = (text: string) =>
  text.split('-').reduce(
    (sum, part) =>
      sum +
      part
        .split('/')
        .map(Number)
        .reduce((a, b) => a / b),
    0,
  );
/** Threads per inch of flange studs: UNC up to 1 in, 8UN above (ASME PCC-1:2013 Table 1). */
const COARSE: Readonly<Record<string, number>> = { '1/2': 13, '5/8': 11, '3/4': 10, '7/8': 9 };
/** T = K·D·S·A_r, lbf·ft, A_r = 0.7854·(D − 1.3/n)² (ASME PCC-1:2013, root area), K 0.2, S 50 ksi. */
function byHand(size: string): number {
  const diameter = inches(size);
  const root = (Math.PI / 4) * (diameter - 1.3 / (COARSE[size] ?? 8)) ** 2;
  return (0.2 * diameter * 50_000 * root) / 12;
}

const { plan, notices } = planned({ 'joints.csv': list('50 ksi') });

test('all 108 flanges are read without a remark and planned without a stop', () => {
  expect(rows).toHaveLength(108);
  expect(notices).toEqual([]);
  expect(plan.joints).toHaveLength(108);
  expect(plan.joints.filter(({ verdict }) => verdict === 'stop')).toEqual([]);
});

describe.each(rows.map((row) => [nameOf(row), row] as const))('%s', (_, row) => {
  const joint = jointOf(plan, tagOf(row));
  test('has the bolts, the bolt size and the bolt circle of the published table', () => {
    expect(joint.boltCount).toBe(Number(row.bolt_count));
    expect(joint.subgroups[0]!.size.replace(' ', '-').startsWith(`${row.bolt_size_in}-`)).toBe(true);
    expect(joint.layout.kind === 'ring' && Math.abs(joint.layout.circle! - inch(Number(row.bolt_circle_in)))).toBeLessThan(0.2);
  });
  test('gets the torque K·D·S·A_r at 50 ksi, and a setting within 5 % of it', () => {
    const final = joint.subgroups[0]!.tightening!.steps.find(({ name }) => name === 'round 3')!;
    // root areas are printed to three or four digits
    expect(Math.abs(inLbfFt(final.torque!.wanted) / byHand(row.bolt_size_in) - 1)).toBeLessThan(0.005);
    expect(Math.abs(final.setting!.torque / final.torque!.wanted - 1)).toBeLessThan(0.05);
  });
});

test('345 MPa and 50 ksi are the same stress but for its rounding, and give the same plan', () => {
  expect(Math.abs(inPsi(MPa(345)) / inPsi(ksi(50)) - 1)).toBeLessThan(0.001);
  const metric = planned({ 'joints.csv': list('345 MPa') }).plan;
  for (const joint of plan.joints) {
    const [ours, other] = [joint, jointOf(metric, joint.tag)].map(({ subgroups }) => subgroups[0]!.tightening!.target.value);
    expect(Math.abs(other! / ours! - 1)).toBeLessThan(0.001);
  }
});

test('bolts, bolt size and bolt circle that contradict the standard’s table are faults, and the other flanges are kept', () => {
  const csv = `joint,rule set,flange,bolts,size,bolt circle,grade,lot,bolt stress
A,flange-bolt-stress,B16.5 NPS 8 Class 300,8,,,A193 B7,STUDS,345 MPa
B,flange-bolt-stress,B16.5 NPS 8 Class 300,,3/4,,A193 B7,STUDS,345 MPa
C,flange-bolt-stress,B16.5 NPS 8 Class 300,,,12 in,A193 B7,STUDS,345 MPa
D,flange-bolt-stress,B16.5 NPS 8 Class 300,12,7/8,330.2 mm,A193 B7,STUDS,345 MPa
E,flange-bolt-stress,B16.47 Series B NPS 30 Class 150,,,,A193 B7,STUDS,345 MPa
F,flange-bolt-stress,B16.5 NPS 9 Class 300,,,,A193 B7,STUDS,345 MPa
G,flange-bolt-stress,that big one,,,,A193 B7,STUDS,345 MPa
`;
  const found = planned({ 'joints.csv': csv, 'tools.yaml': SOUND['tools.yaml']! });
  expect(found.notices.map(({ code, place }) => `${code} ${place?.row} ${place?.column}`)).toEqual([
    'flange-contradicts 2 bolts',
    'flange-contradicts 3 size',
    'flange-contradicts 4 bolt circle',
    'flange-unknown 6 flange',
    'flange-unknown 7 flange',
    'flange-unreadable 8 flange',
  ]);
  expect(found.plan.joints.map(({ tag }) => tag)).toEqual(['D']);
});
