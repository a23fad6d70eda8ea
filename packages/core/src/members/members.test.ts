import { describe, expect, test } from 'vitest';
import { MPa, mm } from '../quantity.ts';
import { type Bolting, memberCompliance } from './member-compliance.ts';
import type { Members } from './members.ts';

type Ring = Extract<Members, { kind: 'ring' }>;
const ring: Ring = {
  kind: 'ring',
  inner: mm(219),
  outer: mm(340),
  thickness: mm(24),
  wall: { thickness: mm(6), side: 'inside' },
  gasket: { kind: 'fibre sheet', inner: mm(220), outer: mm(270) },
};
const bolting: Bolting = { count: 12, circle: mm(295), diameter: mm(20), hole: mm(22), washer: mm(37) };
const plates: Extract<Members, { kind: 'plates' }> = {
  kind: 'plates',
  width: mm(300),
  height: mm(200),
  thickness: mm(20),
  support: 'mirrored',
  bed: { thickness: mm(0.4), modulus: MPa(3000) },
};
const places = [
  { x: mm(0), y: mm(0) },
  { x: mm(100), y: mm(0) },
];
const said = (members: Members, of: Bolting = bolting) => {
  const found = memberCompliance(members, of);
  return found.ok ? [] : found.notices.map(({ code, params }) => [code, ...Object.values(params)].join(': '));
};

test('a ring answers with one figure a bolt, alike for its mirror image, and finite', () => {
  const found = memberCompliance(ring, bolting);
  if (!found.ok) throw new Error('refused');
  const [row] = found.value.rows;
  expect(row).toHaveLength(12);
  for (let i = 1; i < 12; i += 1) expect(row![i]! / row![12 - i]!).toBeCloseTo(1, 9);
  for (const one of Array.from(row!)) expect(Number.isFinite(one)).toBe(true);
  expect(found.value.gasketAssumed).toBe(true);
});

describe('dimensions that no joint has are refused, all at once', () => {
  test.each<[string, Partial<Ring>, number]>([
    ['a gasket thinner than nothing', { gasket: { kind: 'fibre sheet', thickness: mm(-1), inner: mm(220), outer: mm(270) } }, 1],
    ['a gasket outside the face', { gasket: { kind: 'fibre sheet', inner: mm(220), outer: mm(400) } }, 1],
    ['a gasket inside out', { gasket: { kind: 'fibre sheet', inner: mm(270), outer: mm(220) } }, 1],
    [
      'a stress window inside out',
      { gasket: { kind: 'fibre sheet', leastStress: MPa(90), greatestStress: MPa(60), inner: mm(220), outer: mm(270) } },
      1,
    ],
    ['a flange of no thickness', { thickness: mm(0) }, 1],
    ['a figure that is none', { thickness: mm(Number.NaN) }, 1],
    ['bolts that do not lie on the flange', { outer: mm(300) }, 1],
    ['a wall as thick as the flange is wide, and no thickness', { thickness: mm(-2), wall: { thickness: mm(70), side: 'inside' } }, 2],
    ['a hub that reaches the bolts', { hub: { outer: mm(290), length: mm(30) } }, 1],
  ])('%s', (_, change, count) => {
    const found = said({ ...ring, ...change });
    expect(found.length).toBeGreaterThanOrEqual(count);
    for (const one of found) expect(one).toMatch(/^members-impossible: /);
  });
  test('one bolt, or a washer as small as its hole', () => {
    expect(said(ring, { ...bolting, count: 1 })).toEqual(['members-impossible: a ring of one bolt']);
    expect(said(ring, { ...bolting, washer: mm(22) })).toHaveLength(1);
  });
  test('a bolt circle nobody entered', () => {
    const { circle: _circle, ...without } = bolting;
    expect(said(ring, without)).toEqual(['members-unknown: the bolt circle']);
  });
  test('a gasket of another kind without its figures', () => {
    expect(said({ ...ring, gasket: { kind: 'other', inner: mm(220), outer: mm(270) } })).toEqual(['gasket-modulus-needed']);
  });
  test('plates that do not reach under the washers, or have no places', () => {
    expect(said({ ...plates, width: mm(110) }, { ...bolting, places })).toHaveLength(1);
    expect(said(plates, bolting)).toEqual(['members-unknown: the places of the bolts']);
    expect(said({ ...plates, bed: { thickness: mm(0), modulus: MPa(3000) } }, { ...bolting, places })).toHaveLength(1);
  });
  test('a flange that no table has', () => {
    expect(said({ kind: 'standard flange', flange: 'B16.5 NPS 7 Class 300', gasket: { kind: 'spiral wound' } })).toHaveLength(1);
  });
});
