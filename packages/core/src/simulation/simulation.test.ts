import { describe, expect, test } from 'vitest';
import type { Joint } from '../job/job.ts';
import { planInteraction } from '../plan/plan-interaction.ts';
import { planJob } from '../plan/plan-job.ts';
import { preloadWindow } from '../plan/preload-scatter.ts';
import { simulatedJob } from '../plan/simulated-job.ts';
import { mm } from '../quantity.ts';
import { Draws } from '../random/draws.ts';
import { philox } from '../random/philox.ts';
import { chanceAllInside } from '../scatter/all-inside.ts';
import { splitScatter } from '../scatter/contributions.ts';
import { jointWith, testFlange, testJob } from '../test-job.ts';
import { chanceOf } from './chance.ts';
import { mistakeRates, NO_MISTAKES } from './mistakes.ts';
import { jointPlayer } from './play-joint.ts';
import { blocksOf, simulateBlock, simulationTask } from './simulate.ts';
import type { SimulatedJob } from './simulated-job.ts';
import { simulationResult } from './simulation-result.ts';
import { addTally, emptyTally } from './tally.ts';

const words = (text: string) => text.split(' ').map((word) => Number.parseInt(word, 16));

/** Known answers of Random123 (Salmon et al., SC11), philox4x32 with 10 rounds: counter, key, result. */
test.each([
  ['00000000 00000000 00000000 00000000', '00000000 00000000', '6627e8d5 e169c58d bc57ac4c 9b00dbd8'],
  ['ffffffff ffffffff ffffffff ffffffff', 'ffffffff ffffffff', '408f276d 41c83b0e a20bc7c6 6d5451fd'],
  ['243f6a88 85a308d3 13198a2e 03707344', 'a4093822 299f31d0', 'd16cfe09 94fdcceb 5001e420 24126ea1'],
])('the generator gives its published words at counter %s', (counter, key, answer) => {
  const out = new Uint32Array(4);
  const [c0, c1, c2, c3] = words(counter) as [number, number, number, number];
  const [k0, k1] = words(key) as [number, number];
  philox(c0, c1, c2, c3, k0, k1, out);
  expect([...out]).toEqual(words(answer));
});

test('normal draws have the moments of a normal variable', () => {
  const draws = new Draws(7);
  draws.start(0, 0);
  const values = Array.from({ length: 200_000 }, () => draws.normal());
  const moment = (order: number) => values.reduce((sum, value) => sum + value ** order, 0) / values.length;
  expect(moment(1)).toBeCloseTo(0, 2);
  expect(Math.abs(moment(2) - 1)).toBeLessThan(0.01);
  expect(Math.abs(moment(3))).toBeLessThan(0.03);
  expect(Math.abs(moment(4) - 3)).toBeLessThan(0.06);
});

test('a stream is the same whoever asked before', () => {
  const [one, other] = [new Draws(9_007_199_254_740_991), new Draws(9_007_199_254_740_991)];
  one.start(3, 5);
  one.normal();
  one.start(4, 5);
  other.start(4, 5);
  expect(one.normal()).toBe(other.normal());
  other.start(4, 6);
  expect(one.normal()).not.toBe(other.normal());
});

/** NIST/SEMATECH e-Handbook 7.2.4.1: 4 of 20, limits 0.08066 and 0.41599. */
test('the interval of a chance is Wilson’s', () => {
  expect(chanceOf(4, 20).low).toBeCloseTo(0.08066, 4);
  expect(chanceOf(4, 20).high).toBeCloseTo(0.41599, 4);
});

const taskOf = (runs: number, rates = NO_MISTAKES, seed = 7) => {
  const task = simulationTask(runs, seed, rates);
  if (!task.ok) throw new Error('a task of the test is refused');
  return task.value;
};

function play(job: SimulatedJob, task: ReturnType<typeof taskOf>, order = (blocks: number[]) => blocks) {
  const tallies = new Map(
    order(Array.from({ length: blocksOf(task) }, (_, block) => block)).map((block) => [block, simulateBlock(job, task, block)]),
  );
  const sum = emptyTally(job);
  for (const block of [...tallies.keys()].sort((a, b) => a - b)) addTally(sum, tallies.get(block)!);
  return sum;
}

const twelve = testFlange({ thickness: mm(2), modulus: 800, inner: mm(220), outer: mm(270) } as never);

function simulated(...joints: Joint[]) {
  const job = joints.length > 0 ? testJob(joints) : testJob();
  const plan = planInteraction(job, planJob(job));
  return { plan, ...simulatedJob(job, plan) };
}

describe('a joint whose bolts do not act on each other', () => {
  const { plan, job } = simulated();
  const tightening = plan.joints[0]!.subgroups[0]!.tightening!;
  test('ends outside as often as the quadrature says', () => {
    const { shared, individual } = splitScatter(tightening.contributions!);
    const mean = tightening.steps.at(-1)!.setting!.preload;
    const all = chanceAllInside({ mean, shared, individual }, preloadWindow(tightening), 8);
    expect(all).toBeCloseTo(tightening.scatter!.all, 9);
    const { runs, outside } = play(job, taskOf(20_000));
    const { low, high } = chanceOf(outside, runs);
    expect(1 - all).toBeGreaterThan(low);
    expect(1 - all).toBeLessThan(high);
  });
  test('a bolt passed over in the last step stays below its window: 1 − (1 − p)⁸', () => {
    const still = {
      ...job,
      joints: job.joints.map((joint) => ({ ...joint, parts: joint.parts.map((part) => ({ ...part, lotMean: 0, boltToBolt: 0 })) })),
    };
    const steady = { ...still, tools: still.tools.map((tool) => ({ ...tool, certificate: 0 })) };
    const rates = { ...NO_MISTAKES, missed: 0.02 };
    const { runs, outside, joints } = play(steady, taskOf(8_000, rates));
    const { low, high } = chanceOf(outside, runs);
    expect(1 - 0.98 ** 8).toBeGreaterThan(low - 0.01);
    expect(1 - 0.98 ** 8).toBeLessThan(high + 0.01);
    expect(joints[0]!.outsideByMistake).toBeGreaterThan(0.9 * outside);
  });
  test('the work on the nuts is the area under torque over rotation', () => {
    const { setting } = tightening.steps.at(-1)!;
    const rotation = tightening.rotation!.expected;
    const quiet = quietened(job);
    const { joints } = play(quiet, taskOf(50));
    expect(joints[0]!.energy / 50).toBeCloseTo((8 * setting!.torque * rotation) / 2 / 1000, 6);
  });
});

/** The same job without scatter. */
const quietened = (job: SimulatedJob): SimulatedJob => ({
  ...job,
  tools: job.tools.map((tool) => ({ ...tool, certificate: 0 })),
  joints: job.joints.map((joint) => ({
    ...joint,
    parts: joint.parts.map((part) => ({ ...part, yield: 1e9, lotMean: 0, boltToBolt: 0 })),
    rounds: joint.rounds.map((round) => ({
      ...round,
      settings: round.settings.map((setting) => ('repeatability' in setting ? { ...setting, repeatability: 0 } : setting)),
    })),
  })),
});

test('without scatter and mistakes a ring ends as its plan says', () => {
  const { plan, job } = simulated(twelve);
  const rounds = plan.joints[0]!.interaction!.rounds;
  const quiet = quietened(job);
  const draws = new Draws(1);
  draws.start(0, 0);
  const { force, minutes, energy } = jointPlayer(
    quiet,
    quiet.joints[0]!,
    NO_MISTAKES,
  )(draws, new Float64Array(quiet.tools.length + quiet.lots.length));
  expect([...force].map(Math.round)).toEqual(rounds.at(-1)!.force);
  const sum = (key: 'minutes' | 'energy') => rounds.reduce((total, round) => total + round[key], 0);
  expect(minutes).toBeCloseTo(sum('minutes'), 9);
  expect(energy).toBeCloseTo(sum('energy'), 6);
});

test('the same seed gives the same tally, in whatever order blocks were played; another seed another', () => {
  const { job } = simulated(twelve, jointWith('en1090-torque', {}));
  const task = taskOf(130, { ...NO_MISTAKES, missed: 0.01, 'second-pull': 0.01, 'wrong-setting': 0.05 });
  const forwards = play(job, task);
  expect(forwards.runs).toBe(130);
  expect(play(job, task, (blocks) => blocks.reverse())).toEqual(forwards);
  expect(play(job, { ...task, seed: 8 })).not.toEqual(forwards);
});

test('joints that no torque ends, and plans that stop, are named', () => {
  const twistOff = jointWith('en1090-hrc', { system: 'HRC' }, { tag: 'H1' });
  const bySnug = jointWith('en1090-combined', { clampThickness: undefined as never }, { tag: 'C1' });
  const { notSimulated } = simulated(twistOff, bySnug);
  expect(notSimulated.map(({ tag }) => tag).sort()).toEqual(['C1', 'H1']);
});

test('a result is finite and whole', () => {
  const { job, notSimulated } = simulated(twelve);
  const task = taskOf(50);
  const result = simulationResult('test', job, notSimulated, task, play(job, task));
  expect(JSON.parse(JSON.stringify(result))).toEqual(result);
  expect(result.joints[0]!.lowest.counts.reduce((sum, one) => sum + one, 0)).toBe(50);
  const none = simulationResult('test', job, notSimulated, task, emptyTally(job));
  expect(none.outside).toEqual({ value: 0, low: 0, high: 1 });
});

describe('bad input', () => {
  test('every unknown mistake and impossible rate is named at once', () => {
    const found = mistakeRates({ sneezed: 0.1, missed: -1, 'second-pull': Number.NaN });
    expect(found.ok ? [] : found.notices.map(({ code }) => code)).toEqual(['mistake-unknown', 'mistake-rate', 'mistake-rate']);
  });
  test.each([
    [0, 1],
    [1.5, 1],
    [Number.NaN, 1],
    [10_000_001, 1],
    [10, -1],
    [10, 0.5],
    [10, 2 ** 53],
  ])('%s runs from seed %s are refused', (runs, seed) => expect(simulationTask(runs, seed, NO_MISTAKES).ok).toBe(false));
});
