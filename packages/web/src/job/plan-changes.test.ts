import { type JointPlan, planJob } from '@clampwright/core';
import { expect, test } from 'vitest';
import { demoJob } from '../../test/demo-job.ts';
import { planChanges } from './plan-changes.ts';

const card = planJob(demoJob()).joints.find(({ tag }) => tag === 'FB-S1')!;
/** The same card with another setting in its second step. */
const reset = (text: string): JointPlan => ({
  ...card,
  subgroups: card.subgroups.map((one) => ({
    ...one,
    tightening: {
      ...one.tightening!,
      steps: one.tightening!.steps.map((step) => (step.name === 'second step' ? { ...step, setting: { ...step.setting!, text } } : step)),
    },
  })),
});

test('planChanges() names the step, its bolts, what was and what is', () => {
  const { steps, sequence, datum } = planChanges(card, reset('gear 3, step 5'));
  expect(steps.map(({ step, bolts, was, now }) => [step, bolts.length, was?.setting?.text, now?.setting?.text])).toEqual([
    ['second step', 8, 'gear 3, step 6', 'gear 3, step 5'],
  ]);
  expect([sequence, datum]).toEqual([false, false]);
});

test('planChanges() is silent about what a crew does not see, and sees another datum, order or number of bolts', () => {
  expect(planChanges(card, { ...card, title: 'renamed' })).toEqual({ steps: [], sequence: false, datum: false });
  expect(planChanges(card, { ...card, datum: { ...card.datum!, direction: 'counter-clockwise' } }).datum).toBe(true);
  expect(planChanges(card, { ...card, sequence: { ...card.sequence, list: [...card.sequence.list].reverse() } }).sequence).toBe(true);
  const fewer = { ...card, boltCount: 7, subgroups: card.subgroups.map((one) => ({ ...one, positions: one.positions.slice(0, 7) })) };
  expect(planChanges(card, fewer).steps.map(({ step, bolts, now }) => [step, bolts, now])).toEqual([
    ['snug', [8], undefined],
    ['first step', [8], undefined],
    ['second step', [8], undefined],
  ]);
});
