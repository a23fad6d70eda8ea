import { expect, test } from 'vitest';
import { testPlan } from '../../../papers/src/test-plan.ts';
import { hashOf } from '../bytes/hash.ts';
import { openFold } from '../fold/fold.ts';
import { jointId, testWriter } from '../test-book.ts';
import { issuePlan } from './issue-plan.ts';

test('issuePlan() freezes the joints that do not stop, and the fold judges work by them', () => {
  const plan = testPlan();
  const tags = plan.joints.map(({ tag }) => tag);
  const { body, attachments } = issuePlan(plan, 'P-7', (tag) => jointId(tags.indexOf(tag)));
  expect(body.joints.map(({ tag }) => tag)).toEqual(plan.joints.filter(({ verdict }) => verdict !== 'stop').map(({ tag }) => tag));
  expect(attachments.map(hashOf)).toEqual([body.plan, ...body.joints.map(({ card }) => card)]);
  const fold = openFold();
  fold.add(testWriter(1).write('plan-issued', body));
  const issued = body.joints[0]!;
  expect(fold.state('joint', issued.joint).plan).toMatchObject({ number: 'P-7', slice: { bolts: issued.bolts } });
});
