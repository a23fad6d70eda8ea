import { expect, test } from 'vitest';
import { testPlan } from '../../../papers/src/test-plan.ts';
import { hashOf } from '../bytes/hash.ts';
import { openFold } from '../fold/fold.ts';
import { jointId, testWriter } from '../test-book.ts';
import { issuePlan } from './issue-plan.ts';

test('issuePlan() freezes the joints that do not stop, and the fold judges work by them', () => {
  const plan = testPlan();
  const tags = plan.joints.map(({ tag }) => tag);
  const { plan: body, cards, attachments } = issuePlan(plan, 'P-7', (tag) => jointId(tags.indexOf(tag)));
  expect(cards.map(({ slice: { tag } }) => tag)).toEqual(plan.joints.filter(({ verdict }) => verdict !== 'stop').map(({ tag }) => tag));
  expect(attachments.map(hashOf)).toEqual([body.plan, ...cards.map(({ slice: { card } }) => card)]);
  const fold = openFold();
  const writer = testWriter(1);
  fold.add(writer.write('plan-issued', body));
  for (const card of cards) fold.add(writer.write('card-issued', card));
  const issued = cards[0]!.slice;
  expect(fold.state('joint', issued.joint).plan).toMatchObject({ number: 'P-7', slice: { bolts: issued.bolts } });
});
