import { expect, test } from 'vitest';
import { testJob, testPlan } from '../../../papers/src/test-plan.ts';
import { hashOf } from '../bytes/hash.ts';
import { readUtf8 } from '../bytes/text.ts';
import { openFold } from '../fold/fold.ts';
import { jointId, testWriter } from '../test-book.ts';
import { type IssuedValve, issuePlan } from './issue-plan.ts';

test('issuePlan() freezes the joints that do not stop, and the fold judges work by them', () => {
  const plan = testPlan();
  const tags = plan.joints.map(({ tag }) => tag);
  const valve = { tag: 'GV-1', way: 'opening', plan: { verdict: 'by hand', turns: 22 } } as IssuedValve;
  const {
    plan: body,
    job,
    cards,
    valves,
    attachments,
    entries,
  } = issuePlan(testJob(), plan, [valve], {
    number: 'P-7',
    jointId: (tag) => jointId(tag === 'GV-1' ? 99 : tags.indexOf(tag)),
  });
  expect(cards.map(({ slice: { tag } }) => tag)).toEqual(plan.joints.filter(({ verdict }) => verdict !== 'stop').map(({ tag }) => tag));
  expect(attachments.map(hashOf)).toEqual([body.plan, job.job, ...cards.map(({ slice: { card } }) => card), valves[0]!.card]);
  expect(JSON.parse(readUtf8(attachments[1]!)!)).toEqual(JSON.parse(JSON.stringify(testJob())));
  const fold = openFold();
  const writer = testWriter(1);
  for (const { kind, body: told } of entries) fold.add(writer.write(kind, told));
  expect(fold.state('book', 'book').plans[0]).toMatchObject({ number: 'P-7', job: job.job });
  expect(fold.state('joint', jointId(99))).toMatchObject({ tag: 'GV-1', valve: { number: 'P-7', card: valves[0]!.card } });
  const issued = cards[0]!.slice;
  expect(fold.state('joint', issued.joint).plan).toMatchObject({ number: 'P-7', slice: { bolts: issued.bolts } });
});
