import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  circulant,
  customSchedule,
  evenness,
  jointCompliance,
  looseJoint,
  nearestLevel,
  onePassTargets,
  oneSettingSchedule,
  play,
  severalSettingsSchedule,
  turnsOf,
} from '@clampwright/core';
import { describe, expect, test } from 'vitest';
import { CHART_36 } from './chart-36.ts';
import type { InteractionCase } from './interaction-case.ts';

// finite-element compliance of rows/interaction; caps and star orders stand there
const folder = join(import.meta.dirname, '../rows/interaction');
const cases = readdirSync(folder).map((name) => {
  const one = JSON.parse(readFileSync(join(folder, name), 'utf8')) as InteractionCase & {
    readonly bolts: { readonly yield_force_N: number };
  };
  const compliance = jointCompliance(
    one.flexibility.member_matrix ?? circulant(one.flexibility.member_row!),
    one.flexibility.bolt_compliance,
  );
  if (!compliance.ok) throw new Error(one.id);
  const task = {
    compliance: compliance.value,
    target: one.bolts.target_N,
    star: one.optimal_one_pass_star!.order,
    circular: one.optimal_one_pass!.order,
  };
  return { one, task, cap: 0.85 * one.bolts.yield_force_N };
});

/** The chart's torques as forces, by an arm that puts the target on a setting, or half-way between two. */
const levels = (target: number, offset: number) => {
  const arm = (CHART_36[23]! * (1 + 0.049 * offset)) / target;
  return CHART_36.map((torque, setting) => ({ setting, force: torque / arm }));
};
const OFFSETS = [0, 0.5];
const all = cases.flatMap((one) => OFFSETS.map((offset) => [`${one.one.id}, offset ${offset}`, one, offset] as const));

test('neighbours of the chart are at most 5 % apart', () => {
  for (let i = 1; i < CHART_36.length; i += 1) expect(CHART_36[i]! / CHART_36[i - 1]!).toBeLessThanOrEqual(1.0501);
});

test.each(all)('%s: free targets, no cap: every bolt ends at its target to 1e-9', (_, { task }) => {
  const final = new Float64Array(task.compliance.size).fill(task.target);
  for (const order of [task.circular, task.star]) {
    const state = looseJoint(task.compliance);
    play(state, [{ order: order as number[], target: onePassTargets(task.compliance, order as number[], final) }]);
    expect(evenness(state.force, task.target).worst).toBeLessThan(1e-9);
  }
});

describe('several settings a pass', () => {
  // goal: two passes, at most 3 settings each, 85 % of axial yield: 8 % on rings of 24, 5 % on the other rings
  test.each(all)('%s: two passes leave it even, within the cap', (_, { one, task, cap }, offset) => {
    const passes = severalSettingsSchedule(task, { levels: levels(task.target, offset), cap, settingsPerPass: 3, plays: 3000 });
    expect(passes).toHaveLength(2);
    for (const pass of passes) {
      expect(new Set(pass.level).size).toBeLessThanOrEqual(3);
      expect(pass.peak).toBeLessThanOrEqual(cap * (1 + 1e-9));
    }
    expect(passes[1]!.worst).toBeLessThanOrEqual(one.bolts.count === 24 && one.geometry.rbc !== undefined ? 0.08 : 0.05);
    // and play-back from nothing says the same
    const state = looseJoint(task.compliance);
    play(
      state,
      passes.map(({ way, level }) => ({ order: turnsOf(task, way), target: level.map(({ force }) => force) })),
      'tighten only',
    );
    expect(evenness(state.force, task.target).worst).toBeCloseTo(passes[1]!.worst, 12);
  });
});

describe('one setting a pass', () => {
  test.each(all)('%s: never more passes than custom for the same evenness, nothing above the final setting', (_, { task }, offset) => {
    const settings = levels(task.target, offset);
    const final = nearestLevel(settings, task.target);
    const leads = [nearestLevel(settings, 0.33 * task.target), nearestLevel(settings, 0.7 * task.target)];
    for (const wanted of [0.05, 0.1, 0.2]) {
      const custom = customSchedule(task, leads, final, wanted);
      const found = oneSettingSchedule(task, [leads, leads.slice(0, 1), []], final, wanted);
      if (custom.at(-1)!.worst <= wanted) {
        expect(found.at(-1)!.worst).toBeLessThanOrEqual(wanted);
        expect(found.length).toBeLessThanOrEqual(custom.length);
      }
      for (const { level } of found) {
        expect(new Set(level).size).toBe(1);
        expect(level[0]!.force).toBeLessThanOrEqual(final.force);
      }
    }
  });
});
