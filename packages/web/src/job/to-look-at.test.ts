import { planJob } from '@clampwright/core';
import { issuePlan, openFold } from '@clampwright/record';
import { jointId, testWriter } from '@clampwright/record/test-book';
import { expect, test } from 'vitest';
import { demoJob } from '../../test/demo-job.ts';
import { toLookAt } from './to-look-at.ts';

const job = demoJob();
const plan = planJob(job);
// two subgroups: bolts 1 to 4 and 5 to 8
const card = plan.joints.find(({ tag }) => tag === 'FB-S3')!;

function inspector() {
  const issue = issuePlan(job, plan, [], { number: 'P-1', jointId: (tag) => jointId(plan.joints.findIndex((one) => one.tag === tag)) });
  const [office, phone] = [testWriter(1), testWriter(2)];
  const fold = openFold();
  for (const { kind, body } of issue.entries) fold.add(office.write(kind, body));
  const joint = issue.cards.find(({ slice }) => slice.tag === 'FB-S3')!.slice.joint;
  return {
    look: (bolt: number, passed: boolean) => fold.add(phone.write('inspected', { joint, bolt, rule: card.rule.id, passed })),
    asked: (sample: readonly number[]) => toLookAt(fold.state('joint', joint), card, sample),
  };
}

test('toLookAt() ends with the sample where every bolt of it passed', () => {
  const { look, asked } = inspector();
  expect(asked([2, 6])).toEqual({ next: 2, failed: [], extended: [] });
  look(2, true);
  expect(asked([2, 6]).next).toBe(6);
  look(6, true);
  expect(asked([2, 6])).toEqual({ next: undefined, failed: [], extended: [] });
});

test('toLookAt() asks for all others of the subgroup in which one failed, and for no more', () => {
  const { look, asked } = inspector();
  look(2, false);
  expect(asked([2, 6])).toMatchObject({ next: 6, extended: [] });
  look(6, true);
  expect(asked([2, 6])).toEqual({ next: 1, failed: [2], extended: [1, 3, 4] });
  for (const bolt of [1, 3]) look(bolt, true);
  look(4, false);
  expect(asked([2, 6])).toEqual({ next: undefined, failed: [2, 4], extended: [1, 3, 4] });
  // put right and looked at again
  look(2, true);
  look(4, true);
  expect(asked([2, 6])).toEqual({ next: undefined, failed: [], extended: [] });
});
