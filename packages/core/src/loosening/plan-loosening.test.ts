import { describe, expect, test } from 'vitest';
import { findThread } from '../fasteners/find-thread.ts';
import type { Thread } from '../fasteners/thread.ts';
import { degrees, inNewtonMetre, kN, MPa, Nm } from '../quantity.ts';
import { testTool } from '../test-job.ts';
import { shankTorqueAtYield } from '../torque/torsional-failure.ts';
import { freshLooseningShare } from './breakaway.ts';
import { FASTENER_STATES } from './conditions.ts';
import { type LooseningTask, planLoosening } from './plan-loosening.ts';
import { mayBeReused } from './reuse.ts';

const m24 = findThread('M24') as { readonly ok: true; readonly value: Thread };
const task: LooseningTask = {
  state: 'rusted',
  tightened: Nm(800),
  preload: kN(247),
  chart: testTool.chart,
  list: [[1], [5], [3], [7], [2], [6], [4], [8]],
  staged: false,
  pressure: false,
};
const planned = (change: Partial<LooseningTask> = {}) => {
  const found = planLoosening({ ...task, ...change });
  if (!found.ok) throw new Error('refused');
  return found.value;
};
const codes = (change: Partial<LooseningTask> = {}) => planned(change).notices.map(({ code }) => code);

/** reference/practice §1.1: M24, K = 0.125: a fresh nut takes 0.68 of its tightening torque; §1.2 rusted: up to twice. */
test('a fresh M24 takes less than it was tightened with, a rusted one may take twice', () => {
  const fresh = freshLooseningShare(m24.value, 0.125);
  expect(fresh).toBeCloseTo(0.68, 2);
  const { low, high } = planned({ state: 'fresh' }).breakaway;
  expect(fresh * 800).toBeGreaterThan(inNewtonMetre(low));
  expect(fresh * 800).toBeLessThan(inNewtonMetre(high));
  expect(inNewtonMetre(planned().breakaway.high)).toBeCloseTo(1600, 6);
});

/** reference/practice §1.3: M24 10.9 with 247 kN still in it stands 675 N·m elastically; 800 needing 2 × 800 must have 1600 in hand at 85–90 %. */
test('where the bolt goes before the nut, the method changes and the torque is not raised', () => {
  const boltLimit = shankTorqueAtYield(MPa(940), m24.value, kN(247), 'elastic');
  expect(inNewtonMetre(boltLimit)).toBeCloseTo(675, 0);
  expect(codes({ boltLimit })).toContain('loosening-bolt');
  expect(codes({ boltLimit, tightened: Nm(300) })).not.toContain('loosening-bolt');
});

describe('tool and socket', () => {
  const settings = (...torques: number[]) => ({
    ...testTool.chart,
    settings: torques.map((torque, i) => ({ labels: ['1', String(i + 1)], torque: Nm(torque) })),
  });
  test('a tool that has less is refused, one that is planned beyond 85 % is said', () => {
    expect(codes({ chart: settings(500, 1500) })).toEqual(['loosening-tool-small']);
    expect(codes({ chart: settings(500, 1700) })).toEqual(['loosening-tool-near']);
    expect(codes({ chart: settings(500, 1600, 1900) })).toEqual([]);
  });
  test('the setting that only loosens goes first, and is never for tightening', () => {
    const chart = settings(500, 1650, 1900);
    const own = { ...chart, settings: chart.settings.map((one, at) => (at === 2 ? { ...one, looseningOnly: true } : one)) };
    expect(planned({ chart: own }).setting).toMatchObject({ looseningOnly: true, text: 'gear 1, step 3' });
    expect(codes({ chart: own })).toContain('loosening-setting-only');
    expect(planned({ chart }).setting).toMatchObject({ looseningOnly: false, text: 'gear 1, step 2' });
  });
  test('a socket rated for less stops', () => expect(codes({ socketRating: Nm(1500) })).toContain('loosening-socket'));
});

describe('order of release', () => {
  test('in stages no nut comes off while its neighbours are tight', () => {
    const { stages } = planned({ staged: true });
    expect(stages.map(({ name }) => name)).toEqual(['ease by half', 'ease until loose', 'free']);
    for (const { bolts } of stages) expect([...bolts].sort()).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });
  test('a pressure joint is staged, begins at the far side, and holds for permit and name', () => {
    const open = { pressure: true, firstBolt: 7 };
    expect(planned(open).stages[0]).toMatchObject({ name: 'ease by half', bolts: [7, 2, 6, 4, 8, 1, 5, 3] });
    expect(codes(open)).toContain('loosening-release-missing');
    expect(codes({ ...open, permit: 'LB-2218' })).toContain('loosening-release-missing');
    expect(codes({ ...open, permit: 'LB-2218', releasedBy: 'Maren Hollow' })).not.toContain('loosening-release-missing');
  });
});

test('a torque that is none is refused', () => {
  for (const tightened of [Nm(0), Nm(-5), Nm(Number.NaN)]) expect(planLoosening({ ...task, tightened }).ok).toBe(false);
});

test('every state has an interval that rises, with its source', () => {
  for (const state of FASTENER_STATES) {
    const { breakaway } = planned({ state });
    expect(breakaway.low).toBeLessThan(breakaway.high);
    expect(breakaway.ratio.source.standard).not.toBe('');
  }
});

/** reference/practice §1.4, 6. */
test.each([
  ['A490', 'plain', false, false, 'never'],
  ['A325', 'plain', true, false, 'never'],
  ['A325', 'plain', false, false, 'with the engineer’s leave'],
  ['10.9', 'HV', false, false, 'never'],
  ['A193 B7', 'plain', false, false, 'after inspection'],
  ['8.8', 'plain', false, true, 'never'],
])('%s, %s, galvanised %s, past yield %s: %s', (grade, system, galvanised, pastYield, wanted) =>
  expect(mayBeReused({ grade, system, galvanised, pastYield }).reuse).toBe(wanted),
);

/** reference/practice §1.4: a corroded thread with 8 N·m over 15 turns costs three quarters of a breakaway; §7: loosening can eat a plan. */
test('the work of one bolt counts breakaway and running off', () => {
  const { workEach } = planned({ rotation: degrees(60), running: { turns: 15, torque: Nm(8) } });
  expect(workEach).toBeCloseTo((0.5 * 1600 * Math.PI) / 3 + 8 * 2 * Math.PI * 15, 6);
  expect(planned({ rotation: degrees(60) }).workEach).toBeUndefined();
});
