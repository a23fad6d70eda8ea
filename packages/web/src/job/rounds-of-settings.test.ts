import { type JointPlan, kN, orderOfRound, planInteraction, planJob, tightenedAlike } from '@clampwright/core';
import { issuePlan, openFold } from '@clampwright/record';
import { jointId, testWriter } from '@clampwright/record/test-book';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../test/demo-job.ts';
import { currentStep, stepStates, taskOf } from './next-bolt.ts';
import { swapTo } from './swap.ts';

/** The suction line of the demo, where the engineer lets bolts stand at up to 130 kN for a while: rounds of several settings. */
const demo = demoJob();
const job = {
  ...demo,
  joints: demo.joints.filter(({ tag }) => tag === 'PH-F1').map((joint) => ({ ...joint, greatestForce: kN(130) })),
};
const plan = planInteraction(job, planJob(job));
const card = plan.joints[0] as JointPlan;
const rounds = card.interaction!.rounds;
const { cards } = issuePlan(job, plan, [], { number: 'P-1', jointId: () => jointId(1) });
const { slice } = cards[0]!;

describe('a plan whose rounds use several settings', () => {
  test('is one: two rounds, of which one at least has two settings', () => {
    expect(card.interaction!.mode).toBe('several settings a round');
    expect(rounds).toHaveLength(2);
    expect(Math.max(...rounds.map(({ settings }) => settings.length))).toBeGreaterThan(1);
  });

  test('is issued with every bolt’s own setting in every round, in place of the passes', () => {
    expect(slice.steps.map(({ step }) => step).slice(0, 3)).toEqual(['snug', 'round 1', 'round 2']);
    expect(slice.steps.map(({ step }) => step)).not.toContain('round 3');
    for (const [at, { settings }] of rounds.entries()) {
      const issued = slice.steps.find(({ step }) => step === `round ${at + 1}`)!.settings;
      for (const { text, bolts } of settings)
        for (const bolt of bolts) expect(issued.find(({ positions }) => positions.includes(bolt))).toMatchObject({ setting: text });
    }
    const bolts = tightenedAlike(card).flatMap(({ positions }) => positions);
    expect(bolts.sort((a, b) => a - b)).toEqual(Array.from({ length: card.boltCount }, (_, i) => i + 1));
  });

  test('is followed round by round, in the order planned, to the end, and the record agrees with all of it', () => {
    const [planner, phone] = [testWriter(1), testWriter(2)];
    const fold = openFold();
    for (const { kind, body } of issuePlan(job, plan, [], { number: 'P-1', jointId: () => jointId(1) }).entries)
      fold.add(planner.write(kind, body));
    const joint = () => fold.state('joint', slice.joint);
    const taken: { readonly step: string; readonly bolt: number; readonly setting: string | undefined }[] = [];
    for (let now = currentStep(stepStates(joint(), card)); now; now = currentStep(stepStates(joint(), card))) {
      const { step, open, repeats } = now;
      for (const bolt of open[0]!) {
        const { tool, setting } = taskOf(joint(), card, bolt, step)!;
        taken.push({ step, bolt, setting });
        fold.add(
          phone.write('bolt-tightened', {
            joint: slice.joint,
            bolt,
            step,
            end: repeats ? 'no nut moves' : 'stall',
            ...(tool === undefined ? {} : { tool }),
            ...(setting === undefined ? {} : { setting }),
          }),
        );
      }
    }
    for (const [at, { settings, changes }] of rounds.entries()) {
      const step = `round ${at + 1}`;
      const own = taken.filter((one) => one.step === step);
      expect(own.map(({ bolt }) => bolt)).toEqual(orderOfRound(card, step)!.flat());
      for (const { bolt, setting } of own) expect(setting).toBe(settings.find(({ bolts }) => bolts.includes(bolt))!.text);
      // the crew is told of as many changes inside the round as the planner counted
      expect(own.filter(({ setting }, i) => i > 0 && setting !== own[i - 1]!.setting)).toHaveLength(changes);
    }
    expect(joint().found.filter(({ notice: { code } }) => /setting|step|order|twice/.test(code))).toEqual([]);
  });

  test('goes on with no other tool on the spot: its rounds are of the planned tool’s chart', () => {
    const from = card.subgroups[0]!.tightening!.steps.find(({ setting }) => setting)!.setting!.tool;
    const other = job.tools.find(({ serial }) => serial !== from)!;
    expect(swapTo(job, card, from, other, job.workDate).stops).toBe(true);
  });
});
