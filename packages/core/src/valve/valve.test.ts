import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { degrees, inch, inLbfFt, inNewtonMetre, lbf, MPa, mm, N, Nm, psi } from '../quantity.ts';
import { testTool } from '../test-job.ts';
import { planValve, STOP_SHORT_TURNS, type ValveTask } from './plan-valve.ts';
import { helpedStemFactor, movingTorque, stemLeadAngle, waterworksTurns } from './stem.ts';

/** reference/practice §5: DN150, 16 bar, Tr 28 × 5: 54.1 N·m to close, 30 turns. */
const task: ValveTask = {
  tag: 'GV-11',
  way: 'closing',
  opens: 'counter-clockwise',
  load: { seat: mm(150), stem: mm(28), differential: MPa(1.6), line: MPa(1.6), valveFactor: 0.4, packing: N(7000) },
  thread: { outside: mm(28), pitch: mm(5), starts: 1, halfAngle: Math.PI / 12 },
  stemFriction: 0.15,
  stroke: mm(150),
  wheel: mm(300),
  ownerLimit: Nm(80),
  permission: 'Maren Hollow, 2026-11-25',
  chart: { ...testTool.chart, settings: [40, 60, 75, 90].map((value, i) => ({ labels: ['1', String(i + 1)], torque: Nm(value) })) },
};
const planned = (change: Partial<ValveTask> = {}) => {
  const found = planValve({ ...task, ...change });
  if (!found.ok) throw new Error('refused');
  return found.value;
};
const without = (...keys: (keyof ValveTask)[]) =>
  Object.fromEntries(Object.entries(task).filter(([key]) => !keys.includes(key as keyof ValveTask))) as unknown as ValveTask;
const verdictOf = (of: ValveTask) => {
  const found = planValve(of);
  return found.ok ? [found.value.verdict, ...found.value.notices.map(({ code }) => code)] : [];
};

test('worked example: torque, turns, rim pull', () => {
  const { torque, turns, rim, person, work } = planned();
  expect(inNewtonMetre(torque)).toBeCloseTo(54.08, 1);
  expect(turns).toBe(30);
  expect(rim).toBeCloseTo((2 * 54.08) / 0.3, 0);
  expect(inNewtonMetre(person)).toBeCloseTo(201, 6);
  expect(work).toBeCloseTo(54.08 * 2 * Math.PI * 30, -1);
});

describe('a tool turns no valve', () => {
  test.each<[keyof ValveTask, string]>([
    ['ownerLimit', 'valve-limit-missing'],
    ['permission', 'valve-permission-missing'],
    ['opens', 'valve-direction-missing'],
  ])('without %s', (key, code) => expect(verdictOf(without(key))).toEqual(['stop', code]));
  test('without all three, and each is named', () => expect(verdictOf(without('ownerLimit', 'permission', 'opens'))).toHaveLength(4));
  test('that needs more than its owner allows, or may be bound by temperature', () => {
    expect(verdictOf({ ...task, ownerLimit: Nm(50) })).toEqual(['stop', 'valve-needs-more']);
    expect(verdictOf({ ...task, thermalBinding: true })).toEqual(['stop', 'valve-thermal-binding']);
  });
});

test('the highest setting under the limit, stopped short of the end', () => {
  expect(planned()).toMatchObject({ verdict: 'with the tool', setting: { text: 'gear 1, step 3', torque: Nm(75) } });
  expect(planned().stopAt).toBe(30 - STOP_SHORT_TURNS);
});

test('often no setting is low enough: by hand', () => {
  const chart = { ...task.chart, settings: task.chart.settings.map((one) => ({ ...one, torque: Nm(200) })) };
  expect(verdictOf({ ...task, chart })).toEqual(['by hand', 'valve-by-hand']);
  const loosening = { ...task.chart, settings: task.chart.settings.map((one) => ({ ...one, looseningOnly: true })) };
  expect(verdictOf({ ...task, chart: loosening })).toEqual(['by hand', 'valve-by-hand']);
});

test('a setting whose scatter passes the limit is not under it', () => {
  expect(planned({ ownerLimit: Nm(77) })).toMatchObject({ verdict: 'with the tool', setting: { torque: Nm(60) } });
});

test('the first and the last two turns belong to the hand', () => expect(planned().toolTurns).toBe(30 - 2 * STOP_SHORT_TURNS));

test('worst factors, a weak stem and years of rest are said; a stem that would yield stops', () => {
  const worst = { valveFactor: 0.6, stemFriction: 0.2 };
  expect(verdictOf({ ...task, worst })).toEqual(['with the tool', 'valve-may-need-more']);
  expect(verdictOf({ ...task, stem: { root: mm(22), yield: MPa(205) } })).toEqual(['with the tool']);
  expect(verdictOf({ ...task, stem: { root: mm(13), yield: MPa(205) } })).toEqual(['stop', 'valve-stem-yields']);
  expect(verdictOf({ ...task, longUnmoved: true })).toEqual(['with the tool', 'valve-long-unmoved']);
});

/** reference/practice §5, inch: 35 lbf·ft at stem friction 0.15, 43.7 at 0.20, 46.5 with valve factor 0.5. */
test('worked example in inches', () => {
  const load = { seat: inch(6), stem: inch(1.25), differential: psi(200), line: psi(200), packing: lbf(1500) };
  const thread = { outside: inch(1.25), pitch: inch(0.2), starts: 1, halfAngle: degrees(14.5) };
  const footPounds = (valveFactor: number, stemFriction: number) =>
    inLbfFt(planned({ load: { ...load, valveFactor }, thread, stemFriction }).torque);
  expect(footPounds(0.3, 0.15)).toBeCloseTo(35, 0);
  expect(footPounds(0.3, 0.2)).toBeCloseTo(43.7, 1);
  expect(footPounds(0.5, 0.15)).toBeCloseTo(46.5, 1);
});

test('no valve is ever given a torque that may pass its owner’s limit', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 5, max: 500 }), { maxLength: 20 }), fc.integer({ min: 55, max: 400 }), (torques, limit) => {
      const chart = { ...task.chart, settings: torques.map((value, i) => ({ labels: ['1', String(i + 1)], torque: Nm(value) })) };
      const { setting, verdict } = planned({ chart, ownerLimit: Nm(limit) });
      if (setting) expect(setting.torque * (1 + chart.repeatability)).toBeLessThanOrEqual(Nm(limit));
      expect(verdict === 'with the tool').toBe(setting !== undefined);
    }),
    { seed: 20_261_202, numRuns: 200 },
  );
});

test('opening takes less than closing: the line pushes the stem out', () => {
  expect(planned({ way: 'opening' }).torque).toBeLessThan(planned().torque);
});

/** Lowering a load of 5 kN, square thread 25 × 5, f = 0.09, collar 0.06 on 45 mm: 7.83 N·m (reference row we-PS9-8-4-TL, published). */
test('a stem pushed out by the line turns against friction less its lead', () => {
  const square = { outside: mm(25), pitch: mm(5), starts: 1, halfAngle: 0 };
  const collar = Nm((5 * 0.06 * 45) / 2);
  expect(inNewtonMetre(movingTorque(N(-5000), square, 0.09)) + inNewtonMetre(collar)).toBeCloseTo(7.83, 2);
  expect(helpedStemFactor({ ...square, starts: 4 }, 0.05)).toBe(0);
  const high = planned({ way: 'opening', load: { ...task.load, line: MPa(40), differential: MPa(0) } });
  expect(high.torque).toBeGreaterThan(0);
  expect(high.work).toBeGreaterThan(0);
});

/** 3·n + 2 or 3·n + 3 turns; 8 in: 27 (reference rows VA-041 to VA-045, published). */
test('the turns of a waterworks valve are held against the rule', () => {
  expect(waterworksTurns(12).low).toBe(38);
  expect(waterworksTurns(8).high).toBe(27);
  const stroke = mm(105);
  expect(verdictOf({ ...task, stroke, waterworksInches: 6 })).toEqual(['with the tool']);
  const twice = { ...task.thread, starts: 2 };
  expect(verdictOf({ ...task, stroke, thread: twice, waterworksInches: 6, ownerLimit: Nm(100) })).toEqual(['stop', 'valve-turns-differ']);
});

test('a stroke of four turns leaves nothing for a tool, and that is said', () => {
  expect(verdictOf({ ...task, stroke: mm(20) })).toEqual(['by hand', 'valve-few-turns']);
});

test('a stem whose friction exceeds its lead holds by itself', () => {
  expect(Math.tan(stemLeadAngle(task.thread))).toBeLessThan(0.15 / Math.cos(task.thread.halfAngle));
});

test('dimensions that are none are refused', () => {
  for (const load of [
    { ...task.load, seat: mm(0) },
    { ...task.load, valveFactor: Number.NaN },
  ])
    expect(planValve({ ...task, load }).ok).toBe(false);
  expect(planValve({ ...task, ownerLimit: Nm(-1) }).ok).toBe(false);
  expect(planValve({ ...task, wheel: mm(0) }).ok).toBe(false);
  expect(planValve({ ...task, stroke: mm(Number.POSITIVE_INFINITY) }).ok).toBe(false);
  expect(planValve({ ...task, stemFriction: 5 }).ok).toBe(false);
  expect(planValve({ ...task, thread: { ...task.thread, pitch: mm(40) } }).ok).toBe(false);
});
