import { describe, expect, test } from 'vitest';
import type { Joint } from '../job/job.ts';
import { kN, MPa, mm } from '../quantity.ts';
import { jointWith, testFlange, testJob } from '../test-job.ts';
import { planInteraction } from './plan-interaction.ts';
import { planJob } from './plan-job.ts';

const GASKET = { kind: 'spiral wound', modulus: MPa(800), inner: mm(230), outer: mm(262) } as const;
const flange = (change: Partial<Joint> = {}): Joint => testFlange(GASKET, change);
const withGasket = (stresses: object): Joint => {
  const joint = flange();
  const members = joint.members as Extract<Joint['members'], { kind: 'ring' }>;
  return { ...joint, members: { ...members, gasket: { ...members.gasket!, ...stresses } } };
};
const planned = (...joints: Joint[]) => {
  const job = testJob(joints);
  return planInteraction(job, planJob(job)).joints;
};
const codes = (joint: Joint) => planned(joint)[0]!.reasons.map(({ code }) => code);

test('one setting a round by default: no setting above the final one, and as even as wanted', () => {
  const [joint] = planned(flange());
  const interaction = joint!.interaction!;
  const greatest = Math.max(...joint!.subgroups[0]!.tightening!.steps.map(({ setting }) => setting?.torque ?? 0));
  expect(interaction.mode).toBe('one setting a round');
  const final = interaction.rounds.at(-1)!;
  expect(final.worst).toBeLessThanOrEqual(interaction.wanted);
  expect(interaction.rounds.length).toBeLessThanOrEqual(interaction.custom.length);
  for (const { settings } of interaction.rounds) {
    expect(settings).toHaveLength(1);
    expect(settings[0]!.torque).toBeLessThanOrEqual(greatest);
  }
});

test('joints of one kind are computed once, and progress tells of each', () => {
  const job = testJob(Array.from({ length: 40 }, (_, i) => flange({ tag: `R${i}` })));
  const plan = planJob(job);
  const once = performance.now();
  planInteraction({ ...job, joints: job.joints.slice(0, 1) }, { ...plan, joints: plan.joints.slice(0, 1) });
  const single = performance.now() - once;
  const seen: number[] = [];
  const start = performance.now();
  const all = planInteraction(job, plan, (done) => seen.push(done));
  expect(performance.now() - start).toBeLessThan(20 * single + 200);
  expect(seen).toEqual(Array.from({ length: 40 }, (_, i) => i + 1));
  expect(new Set(all.joints.map(({ interaction }) => interaction)).size).toBe(1);
});

describe('several settings a round', () => {
  test('only where the engineer’s figure for the joint allows a bolt above its target, and it is said', () => {
    const [joint] = planned(flange({ greatestForce: kN(95) }));
    expect(joint!.interaction!.mode).toBe('several settings a round');
    expect(joint!.interaction!.rounds).toHaveLength(2);
    for (const { peak, settings } of joint!.interaction!.rounds) {
      expect(peak).toBeLessThanOrEqual(95_000 * (1 + 1e-9));
      expect(settings.length).toBeLessThanOrEqual(3);
    }
    expect(joint!.reasons.map(({ code }) => code)).toContain('above-target-approval');
    expect(joint!.verdict).not.toBe('ready');
  });
  test.each(['en1090-torque', 'rcsc-calibrated-wrench'])('never for %s, whatever figure was given', (rule) => {
    const members: Joint['members'] = {
      kind: 'plates',
      width: mm(600),
      height: mm(600),
      thickness: mm(24),
      support: 'mirrored',
      bed: { thickness: mm(0.4), modulus: MPa(3000) },
    };
    const us = rule.startsWith('rcsc');
    const joint = jointWith(rule, us ? { size: '7/8', grade: 'A325', system: 'plain' } : {}, {
      members,
      greatestForce: kN(400),
      layout: { kind: 'group', bolts: Array.from({ length: 8 }, (_, i) => ({ x: mm(100 * (i % 4)), y: mm(100 * Math.floor(i / 4)) })) },
    });
    const [found] = planned(joint);
    expect(found!.interaction?.mode).not.toBe('several settings a round');
    if (found!.interaction) expect(found!.reasons.map(({ code }) => code)).toContain('above-target-refused');
  });
  test('a figure below every useful setting is said, and one setting a round is planned', () => {
    const [joint] = planned(flange({ greatestForce: kN(1) }));
    expect(joint!.reasons.map(({ code }) => code)).toContain('several-settings-none');
    expect(joint!.interaction!.mode).toBe('one setting a round');
  });
});

describe('the gasket’s window', () => {
  test('a sum of bolts that crushes it, or does not seat it, stops the joint', () => {
    expect(codes(withGasket({ greatestStress: MPa(40) }))).toContain('gasket-load-above');
    expect(codes(withGasket({ leastStress: MPa(200) }))).toContain('gasket-load-below');
    expect(planned(withGasket({ greatestStress: MPa(40) }))[0]!.verdict).toBe('stop');
  });
  test('inside it nothing is said', () => {
    const found = codes(withGasket({ leastStress: MPa(30), greatestStress: MPa(180) }));
    expect(found).not.toContain('gasket-load-above');
    expect(found).not.toContain('gasket-load-below');
  });
  test('a schedule of several settings stays below it bolt by bolt', () => {
    // the area is π/4·(262² − 230²) mm²; 12 bolts share it
    const greatest = 75;
    const joint = { ...withGasket({ greatestStress: MPa(greatest) }), greatestForce: kN(95) };
    const [found] = planned(joint);
    const cap = (greatest * (Math.PI / 4) * (262 ** 2 - 230 ** 2)) / 12;
    for (const { peak } of found!.interaction!.rounds) expect(peak).toBeLessThanOrEqual(cap * (1 + 1e-9));
  });
});

test('dimensions that make no joint are said, and the joint is planned without', () => {
  const members = flange().members as Extract<Joint['members'], { kind: 'ring' }>;
  const [joint] = planned(flange({ members: { ...members, thickness: mm(-3) } }));
  expect(joint!.interaction).toBeUndefined();
  expect(joint!.reasons.map(({ code }) => code)).toContain('members-impossible');
  expect(joint!.subgroups[0]!.tightening!.steps.length).toBeGreaterThan(0);
});
