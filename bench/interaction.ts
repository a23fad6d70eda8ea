import { readFileSync } from 'node:fs';
import {
  chanceAllInside,
  circulant,
  customSchedule,
  jointCompliance,
  type MemberCompliance,
  memberCompliance,
  mm,
  onePassTargets,
  oneSettingSchedule,
  type ScheduleTask,
  severalSettingsSchedule,
} from '../packages/core/src/index.ts';
import { CHART_36 } from '../packages/reference/src/chart-36.ts';
import type { InteractionCase } from '../packages/reference/src/interaction-case.ts';
import { NO_NUMPY, python } from './python.ts';
import { median } from './timing.ts';

/** The gasketed ring of 24 that ships with finite-element truth. */
const ring24 = JSON.parse(readFileSync('packages/reference/rows/interaction/ring24_nps24_spiral.json', 'utf8')) as InteractionCase;

const taken = <T>(outcome: { readonly ok: boolean; readonly value?: T }): T => {
  if (!outcome.ok || outcome.value === undefined) throw new Error('a joint of the bench is refused');
  return outcome.value;
};

/** A gasketed ring of 24 and a tower ring of 120, from dimensions. */
const RINGS = {
  24: () =>
    memberCompliance(
      {
        kind: 'ring',
        inner: mm(575),
        outer: mm(815),
        thickness: mm(48),
        wall: { thickness: mm(10), side: 'inside' },
        gasket: { kind: 'spiral wound', inner: mm(625), outer: mm(660) },
      },
      { count: 24, circle: mm(749), diameter: mm(30), hole: mm(33), washer: mm(56) },
    ),
  120: () =>
    memberCompliance(
      { kind: 'ring', inner: mm(4000), outer: mm(4400), thickness: mm(90), wall: { thickness: mm(36), side: 'outside' } },
      { count: 120, circle: mm(4180), diameter: mm(36), hole: mm(39), washer: mm(66) },
    ),
} as const;

export function taskOf(count: 24 | 120): ScheduleTask {
  if (count === 24) {
    const { member_row: row, bolt_compliance: bolt } = ring24.flexibility;
    return {
      compliance: taken(jointCompliance(circulant(row!), bolt)),
      target: ring24.bolts.target_N,
      star: ring24.optimal_one_pass_star!.order,
      circular: ring24.optimal_one_pass!.order,
    };
  }
  const members: MemberCompliance = taken(RINGS[count]());
  const star = starOrder(count);
  return {
    compliance: taken(jointCompliance(members.rows, 9e-7)),
    target: 200_000,
    star,
    circular: Array.from({ length: count }, (_, i) => i),
  };
}

const starOrder = (count: number): number[] => {
  const quarter = count / 4;
  return Array.from({ length: count }, (_, i) => (Math.floor(i / 4) + [0, 2, 1, 3][i % 4]! * quarter) % count);
};

const CHOLESKY = `
import time, sys, numpy as np, scipy.linalg as la
a = np.array(sys.stdin.read().split(), float); n = int(len(a) ** 0.5); a = a.reshape(n, n); f = np.full(n, 2e5)
def work():
    l = la.cholesky(a, lower=True)
    return l.T @ f / np.diag(l)
work(); t = []
for _ in range(199):
    s = time.perf_counter(); work(); t.append(time.perf_counter() - s)
print(sorted(t)[99] * 1000)
`;

/** How long it takes to know how bolts act on each other, and what to do about it. */
export function interactionBench(): void {
  console.log('\nelastic interaction');
  for (const [count, target] of [
    [24, 150],
    [120, 400],
  ] as const) {
    const ms = median(9, () => RINGS[count]());
    console.log(`  compliance of a ring of ${count} from dimensions: ${ms.toFixed(0)} ms (target under ${target} ms)`);
  }
  const large = taskOf(120);
  const order = large.circular as number[];
  const final = new Float64Array(120).fill(large.target);
  const ms = median(199, () => onePassTargets(large.compliance, order, final));
  console.log(`  one-pass schedule, 120 bolts: ${ms.toFixed(3)} ms (target under 0.5 ms)`);
  const [scipy] = python(CHOLESKY, [...large.compliance.matrix].join(' ')) ?? [];
  if (scipy === undefined) console.log(NO_NUMPY);
  else console.log(`    the same with SciPy’s Cholesky: ${scipy.toFixed(3)} ms; ratio ${(ms / scipy).toFixed(1)}`);
  for (const [count, target] of [
    [24, 1],
    [120, 5],
  ] as const) {
    const task = taskOf(count);
    const arm = CHART_36[23]! / task.target;
    const levels = CHART_36.map((torque, setting) => ({ setting, force: torque / arm }));
    const [third, most] = [levels[11]!, levels[23]!];
    const one = median(3, () => [customSchedule(task, [third], most, 0.1), oneSettingSchedule(task, [[third]], most, 0.1)]);
    const several = median(3, () => severalSettingsSchedule(task, { levels, cap: 1.35 * task.target, settingsPerPass: 3, plays: 3000 }));
    console.log(
      `  schedules, ${count} bolts, 36 settings: one a round ${(one / 1000).toFixed(2)} s, three a round ${(several / 1000).toFixed(2)} s (target under ${target} s)`,
    );
  }
  const joint = { mean: 100, shared: 0.03, individual: 0.02 };
  const integral = median(99, () => {
    for (let i = 0; i < 100; i += 1) chanceAllInside(joint, { low: 90 + i / 100, high: 110 }, 24);
  });
  console.log(`  chance that all bolts lie inside: ${(10 * integral).toFixed(0)} µs (target under 100 µs)`);
}
