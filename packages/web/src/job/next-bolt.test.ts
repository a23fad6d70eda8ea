import { planJob } from '@clampwright/core';
import { issuePlan, openFold } from '@clampwright/record';
import { jointId, testWriter } from '@clampwright/record/test-book';
import { describe, expect, test } from 'vitest';
import { demoJob } from '../../test/demo-job.ts';
import { currentStep, stepStates, taskOf } from './next-bolt.ts';

const job = demoJob();
const plan = planJob(job);

/** One joint of the demo as issued, and a phone that works on it. */
function opened(tag: string) {
  const issue = issuePlan(job, plan, [], {
    number: 'P-1',
    jointId: (one) => jointId(1 + plan.joints.findIndex(({ tag: known }) => known === one)),
  });
  const [planner, phone] = [testWriter(1), testWriter(2)];
  const fold = openFold();
  fold.add(planner.write('plan-issued', issue.plan));
  for (const one of issue.cards) fold.add(planner.write('card-issued', one));
  const card = plan.joints.find((one) => one.tag === tag)!;
  const id = issue.cards.find(({ slice }) => slice.tag === tag)!.slice.joint;
  const joint = () => fold.state('joint', id);
  const now = () => currentStep(stepStates(joint(), card));
  const tighten = (bolt: number, step: string, end: 'stall' | 'no nut moves' = 'stall') =>
    fold.add(phone.write('bolt-tightened', { joint: id, bolt, step, end }));
  /** takes every open bolt of the step in hand, in its order; gives the order */
  const round = (end?: 'stall' | 'no nut moves') => {
    const { step, open } = now()!;
    for (const bolt of open.flat()) tighten(bolt, step, end);
    return { step, order: open.flat() };
  };
  return { fold, phone, card, id, joint, now, tighten, round };
}

describe('stepStates()', () => {
  test('takes the steps in their order and the bolts in the sequence of the plan', () => {
    const { now, round, card } = opened('FB-S1');
    const order = card.sequence.list.flat();
    expect(now()).toMatchObject({ step: 'snug', n: 1, of: 3, left: 8 });
    expect(round()).toEqual({ step: 'snug', order });
    expect(round()).toEqual({ step: 'first step', order });
    expect(round()).toEqual({ step: 'second step', order });
    expect(now()).toBe(undefined);
  });
  test('asks for a bolt that was taken out of order no second time', () => {
    const { now, round, tighten, card } = opened('FB-S1');
    round();
    const order = card.sequence.list.flat();
    tighten(order[3]!, 'first step');
    expect(now()!.open.flat()).toEqual(order.filter((bolt) => bolt !== order[3]));
  });
  test('leaves a bolt with trouble until all others of the step are done; nobody who goes on is out of order', () => {
    const { fold, phone, id, joint, now, round, tighten, card } = opened('FB-S1');
    round();
    const order = card.sequence.list.flat();
    fold.add(phone.write('bolt-trouble', { joint: id, bolt: order[0]!, what: 'bolt spun with nut' }));
    expect(now()!.open.flat()).toEqual([...order.slice(1), order[0]!]);
    for (const bolt of order.slice(1)) tighten(bolt, 'first step');
    expect(now()).toMatchObject({ step: 'first step', left: 1 });
    expect(joint().found.map(({ notice: { code } }) => code)).not.toContain('bolt-out-of-order');
  });
  test('goes round again for every bolt as long as one nut moved, and ends when none did', () => {
    const { now, round, tighten } = opened('PH-F1');
    for (let step = 1; step <= 4; step += 1) round();
    expect(now()).toMatchObject({ step: 'circular round', repeats: true, left: 12 });
    for (const bolt of now()!.open.flat()) tighten(bolt, 'circular round', bolt === 5 ? 'stall' : 'no nut moves');
    expect(now()).toMatchObject({ step: 'circular round', left: 12 });
    round('no nut moves');
    expect(now()).toMatchObject({ step: 're-check' });
  });
  test('opens a loosened bolt again in every step', () => {
    const { fold, phone, id, now, round } = opened('FB-S1');
    for (let step = 1; step <= 3; step += 1) round();
    fold.add(phone.write('loosened', { joint: id, bolts: [4] }));
    expect(now()).toMatchObject({ step: 'snug', left: 1, open: [[4]] });
  });
});

test('taskOf() shows the setting of the tool that took over', () => {
  const { fold, phone, id, joint, card } = opened('FB-S1');
  expect(taskOf(joint(), card, 1, 'snug')).toMatchObject({ bolt: 1 });
  expect(taskOf(joint(), card, 1, 'snug')!.setting).toBe(undefined);
  const planned = taskOf(joint(), card, 1, 'first step')!;
  expect(planned).toMatchObject({ tool: 'SK-B204', setting: 'gear 2, step 9' });
  fold.add(
    phone.write('tool-swapped', {
      joint: id,
      from: 'SK-B204',
      to: 'SK-B117',
      chart: 'a'.repeat(64) as never,
      settings: [{ step: 'first step', setting: 'gear 3, step 2' }],
    }),
  );
  expect(taskOf(joint(), card, 1, 'first step')).toMatchObject({ tool: 'SK-B117', setting: 'gear 3, step 2' });
  // a step that the swap gives no setting for stays with the planned tool
  expect(taskOf(joint(), card, 1, 'second step')).toMatchObject({ tool: 'SK-B204' });
});
