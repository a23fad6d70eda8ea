import { expect, test } from 'vitest';
import type { Battery } from '../battery/battery.ts';
import { kN, mm } from '../quantity.ts';
import { jointWith, testFlange, testJob, testTool } from '../test-job.ts';
import { planInteraction } from './plan-interaction.ts';
import { planJob } from './plan-job.ts';

const battery = { serial: 'P1', volts: 18, ampereHours: 5, health: 1, temperature: 25, lit: 4 } satisfies Battery as Battery;
const tools = [{ ...testTool, kind: 'battery' as const }];

test('work of a torque step is half torque times rotation, for every bolt', () => {
  const [joint] = planJob(testJob()).joints;
  const { steps, rotation } = joint!.subgroups[0]!.tightening!;
  const last = steps.at(-1)!.setting!;
  expect(joint!.work!.energy).toBeCloseTo((8 * last.torque * rotation!.expected) / 2 / 1000, 6);
  expect(joint!.work).toMatchObject({ pulls: 16, ends: 'torque', safeStop: 'after a whole round', assumed: false });
  expect(joint!.work!.draw).toBeUndefined();
});

test('an angle step takes more, may not be broken off, and rests before marking', () => {
  const torque = planJob(testJob()).joints[0]!.work!;
  const angle = planJob(testJob([jointWith('en1090-combined', { clampThickness: mm(48) })])).joints[0]!.work!;
  expect(angle.energy).toBeGreaterThan(2 * torque.energy);
  expect(angle).toMatchObject({ ends: 'angle', safeStop: 'after the first step, before marking' });
});

test('without a clamped thickness a ramp is taken, and said', () => {
  const { clampThickness: _unknown, ...bare } = jointWith('as-specified', { given: { preload: kN(200) } }).subgroups[0]!;
  const joint = { ...jointWith('as-specified', {}), subgroups: [bare] };
  const { work } = planJob(testJob([joint])).joints[0]!;
  expect(work?.assumed).toBe(true);
});

test('battery tools draw more than the nuts get; batteries and chargers follow', () => {
  const joints = Array.from({ length: 12 }, (_, i) => jointWith('en1090-torque', {}, { tag: `J${i}` }));
  const plan = planJob(testJob(joints, { tools, batteries: [battery], charger: { watts: 100, taperMinutes: 15 } }));
  const { work } = plan.joints[0]!;
  expect(work!.draw).toBeGreaterThan(work!.energy / 0.4);
  const { supply, minutes } = plan.sums;
  const pulls = 12 * work!.pulls;
  expect(supply!.draw).toBeCloseTo(12 * work!.draw!, 6);
  // four lit: at least three quarters of 18 V · 5 Ah · 0.9 usable
  expect(supply!.turns[0]!.pulls).toBeLessThan((90 * 3600 * 0.9) / (work!.draw! / work!.pulls));
  expect(supply!.turns[0]!.chance).toBeGreaterThanOrEqual(0.9);
  const covered = supply!.turns.reduce((sum, turn) => sum + turn.pulls, 0);
  expect(covered < pulls).toBe(supply!.notToBegin.length > 0);
  expect(supply!.more! > 0).toBe(covered < pulls);
  expect(minutes).toBeCloseTo(12 * work!.minutes, 9);
  expect(planJob(testJob(joints, { tools, batteries: [{ ...battery, volts: 0 }] })).sums.supply).toBeUndefined();
});

test('joints that stop take nobody’s time', () => {
  const plan = planJob(testJob([jointWith('en1090-torque', {}, { pressure: true })]));
  expect(plan.joints[0]!.verdict).toBe('stop');
  expect(plan.sums).toMatchObject({ minutes: 0, energy: 0 });
  expect(plan.sums.crews.flatMap(({ joints }) => joints)).toEqual([]);
});

test('rounds that are known replace the steps, and the sums follow', () => {
  const flange = testFlange({ kind: 'spiral wound', inner: mm(230), outer: mm(262) });
  const job = testJob([flange]);
  const before = planJob(job);
  const after = planInteraction(job, before);
  const rounds = after.joints[0]!.interaction!.rounds;
  expect(after.joints[0]!.work!.pulls).toBe(rounds.reduce((sum, { pulls }) => sum + pulls, 0));
  expect(after.sums.minutes).toBeCloseTo(after.joints[0]!.work!.minutes, 9);
});

test('inspection by rule set and execution class', () => {
  const of = (rule: string, change = {}) => planJob(testJob([jointWith(rule, {})], change)).joints[0]!.inspection;
  expect(of('en1090-torque', { executionClass: 'EXC3' })).toMatchObject({ method: 'control torque', sample: 1, torqueProves: true });
  expect(of('en1090-combined', { executionClass: 'EXC3' })).toMatchObject({ method: 'angle marks', torqueProves: false });
  expect(of('en1090-torque')).not.toHaveProperty('sample');
});

test('a torque that no battery can push at its temperature stops the joint before the bolt', () => {
  const peak = { amperesPerTorque: 60 / 1e6, cutOff: 13 };
  const weak = { ...battery, cells: { series: 5, parallel: 2, resistance: 0.015 } };
  const codes = (...batteries: (typeof weak)[]) =>
    planJob(testJob([jointWith('en1090-torque', {})], { tools: [{ ...tools[0]!, peak }], batteries })).joints[0]!.reasons.map(
      ({ code }) => code,
    );
  expect(codes(weak)).not.toContain('battery-cannot-push');
  expect(codes({ ...weak, temperature: -20, lit: 2 })).toContain('battery-cannot-push');
  // one warm battery is enough
  expect(codes({ ...weak, temperature: -20, lit: 2 }, weak)).not.toContain('battery-cannot-push');
});
