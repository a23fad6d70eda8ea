import { describe, expect, test } from 'vitest';
import { circulant, type JointCompliance, jointCompliance, MOST_BOLTS } from './joint-compliance.ts';
import { looseJoint } from './joint-state.ts';
import { play, pull, release, turn, untilNoNutMoves } from './play.ts';

// small joints whose answers are worked by hand: A·F = u with the nuts where they stand
const BOLT = 1e-6;
const jointOf = (rows: readonly ArrayLike<number>[], bolt = BOLT): JointCompliance => {
  const made = jointCompliance(rows, bolt);
  if (!made.ok) throw new Error('a joint of the test is refused');
  return made.value;
};
/** Two bolts that share a soft gasket: A = [[3, 1], [1, 3]]·10⁻⁶ mm/N. */
const pair = jointOf([
  [2e-6, 1e-6],
  [1e-6, 2e-6],
]);
const close = (force: ArrayLike<number>, wanted: readonly number[]) => {
  for (const [i, one] of wanted.entries()) expect(force[i]! / 1000).toBeCloseTo(one / 1000, 7);
};

test('the second bolt relieves the first: F₁ = (u₁ − a₁₂·F₂)/a₁₁', () => {
  const state = looseJoint(pair);
  pull(state, 0, 9000);
  pull(state, 1, 9000);
  // u₁ = 3e-6·9000 stays; F₁ = (0.027 − 1e-6·9000)/3e-6
  close(state.force, [6000, 9000]);
});

test('an angle turns the nut on by pitch·angle/2π, and the force follows the whole joint', () => {
  const state = looseJoint(pair);
  pull(state, 0, 3000);
  const reached = turn(state, 0, 0.006);
  expect(reached).toBeCloseTo(3000 + 0.006 / 3e-6, 6);
  turn(state, 1, 0.003);
  // the second nut, begun where it touches (u₂ = a₂₁·5000): 3F₁ + F₂ = 15 000, F₁ + 3F₂ = 5000 + 3000
  close(state.force, [(45_000 - 8000) / 8, (24_000 - 15_000) / 8]);
});

test('a nut taken off gives its load to the other', () => {
  const state = looseJoint(pair);
  pull(state, 0, 9000);
  pull(state, 1, 9000);
  release(state, 1);
  close(state.force, [9000, 0]);
});

test('synchronous tools end with every one of their bolts at its force', () => {
  const state = looseJoint(pair);
  const [forces] = play(state, [{ order: [[0, 1]], target: 9000 }], 'tighten only');
  close(forces!, [9000, 9000]);
});

test('a bolt that goes slack keeps its nut where it is, and carries again when the joint closes on it', () => {
  // a stiff neighbour that levers the joint: strong coupling of the other sign at the far bolt
  const lever = jointOf([
    [2e-6, 1.9e-6, 0],
    [1.9e-6, 2e-6, 1.9e-6],
    [0, 1.9e-6, 4e-6],
  ]);
  const state = looseJoint(lever);
  pull(state, 0, 1000);
  pull(state, 1, 9000);
  expect(state.force[0]).toBe(0);
  expect(state.slackEver.has(0)).toBe(true);
  release(state, 1);
  close([state.force[0]!], [1000]);
});

test('tighten only leaves a bolt that stands above its target, exact loosens it', () => {
  for (const [rule, wanted] of [
    ['tighten only', 9000],
    ['exact', 4000],
  ] as const) {
    const state = looseJoint(pair);
    pull(state, 0, 9000);
    pull(state, 0, 4000, rule);
    expect(state.force[0]).toBeCloseTo(wanted, 6);
  }
});

describe('a gasket that unloads stiffer than it loads', () => {
  // loading 3e-6 + 1e-6 of set; back along 3e-6
  const set = 1e-6;
  test('gives on first loading, and springs back less', () => {
    const state = looseJoint(jointOf([[2e-6]]), 'absent', set);
    turn(state, 0, 0.012);
    expect(state.force[0]).toBeCloseTo(3000 * 1, 6);
    turn(state, 0, -0.003);
    // unloading follows 3e-6 alone: 0.003/3e-6 = 1000
    expect(state.force[0]).toBeCloseTo(2000, 6);
    turn(state, 0, 0.003);
    expect(state.force[0]).toBeCloseTo(3000, 6);
    turn(state, 0, 0.004);
    // and beyond its highest load it gives again
    expect(state.force[0]).toBeCloseTo(4000, 6);
  });
  test('a set of nothing is the plain joint', () => {
    const order = [0, 2, 1, 3];
    const ring = jointOf(circulant([2e-6, 1e-6, 0.5e-6, 1e-6]));
    const [plain, zero] = [looseJoint(ring), looseJoint(ring, 'absent', 0)];
    expect(play(plain, [{ order, target: 5000 }])).toEqual(play(zero, [{ order, target: 5000 }]));
  });
});

test('rounds end when no nut moves, and are never without an end', () => {
  const ring = jointOf(circulant([2e-6, 1.2e-6, 0.8e-6, 1.2e-6]));
  const rounds = untilNoNutMoves(looseJoint(ring), [0, 1, 2, 3], 5000);
  expect(rounds.length).toBeGreaterThan(1);
  expect(rounds.length).toBeLessThan(50);
  for (const force of rounds.at(-1)!) expect(force).toBeGreaterThan(0.998 * 5000);
});

test(`more than ${MOST_BOLTS} bolts are refused before a matrix of them is made`, () => {
  const rows = Array.from({ length: MOST_BOLTS + 1 }, () => []);
  const refusal = jointCompliance(rows, BOLT);
  expect(refusal.ok ? [] : refusal.notices.map(({ code }) => code)).toEqual(['compliance-size']);
});

test('figures that are none are refused', () => {
  for (const figure of [Number.NaN, Number.POSITIVE_INFINITY]) {
    const refusal = jointCompliance([[figure]], BOLT);
    expect(refusal.ok).toBe(false);
  }
});
