import { notice } from '@clampwright/core';
import { expect, test } from 'vitest';
import { testJob, testPlan } from '../../../papers/src/test-plan.ts';
import { openFold } from '../fold/fold.ts';
import { jointId, testWriter } from '../test-book.ts';
import { issuePlan } from './issue-plan.ts';
import { type IssuedJoint, issuedJoints, takenOff } from './taken-off.ts';

const plan = testPlan();
const ready = plan.joints.filter(({ verdict }) => verdict !== 'stop');
const [first, second] = ready as [(typeof ready)[0], (typeof ready)[0]];
const idOf = (tag: string) => jointId(plan.joints.findIndex((one) => one.tag === tag));
const at = (tag: string, work: IssuedJoint['work']): IssuedJoint => ({ joint: idOf(tag), tag, work });
/** the plan with its first joint stopped, and without its second */
const next = {
  ...plan,
  joints: plan.joints
    .filter(({ tag }) => tag !== second.tag)
    .map((joint) =>
      joint.tag === first.tag ? { ...joint, verdict: 'stop' as const, reasons: [notice('tool-unknown', { serial: 'SK-9' })] } : joint,
    ),
};
const reasons = (...given: Parameters<typeof takenOff>) => takenOff(...given).map(({ tag, reason }) => [tag, reason]);

test('a plan takes off what stops in it whatever was done, and what it does not have unless that is finished', () => {
  expect(reasons(next, [at(first.tag, 'finished'), at(second.tag, 'untouched')])).toEqual([
    [first.tag, 'stops'],
    [second.tag, 'gone'],
  ]);
  expect(reasons(next, [at(second.tag, 'begun')])).toEqual([[second.tag, 'gone']]);
  expect(reasons(next, [at(second.tag, 'finished')])).toEqual([]);
});

test('work begun goes on under a new plan, unless that says that it stops', () => {
  const begun = [at(first.tag, 'begun'), at(second.tag, 'untouched')];
  expect(reasons(plan, begun)).toEqual([]);
  expect(reasons(plan, begun, 'continue')).toEqual([]);
  expect(reasons(plan, begun, 'stop')).toEqual([[first.tag, 'begun']]);
});

test('a joint that was taken off is stopped in the fold, work on it is found, and a later card opens it again', () => {
  const fold = openFold();
  const writer = testWriter(1);
  const issue = (number: string, of: typeof plan) => {
    const issued = issuePlan(testJob(), of, [], { number, jointId: idOf, before: issuedJoints(fold) });
    for (const { kind, body } of issued.entries) fold.add(writer.write(kind, body));
    return issued;
  };
  const joint = idOf(first.tag);
  issue('P-1', plan);
  expect(fold.state('joint', joint).takenOff).toBeUndefined();
  expect(issue('P-2', next).cards.map(({ slice }) => slice.tag)).not.toContain(first.tag);
  expect(fold.state('joint', joint).takenOff).toEqual({ number: 'P-2', reason: 'stops' });
  expect(fold.state('joint', idOf(second.tag)).takenOff).toEqual({ number: 'P-2', reason: 'gone' });
  expect(issuedJoints(fold).map(({ tag }) => tag)).not.toContain(first.tag);
  fold.add(writer.write('bolt-tightened', { joint, bolt: 1, step: first.subgroups[0]!.tightening!.steps[0]!.name, end: 'stall' }));
  expect(fold.state('joint', joint).found.map(({ notice }) => notice.code)).toContain('card-was-withdrawn');
  issue('P-3', plan);
  expect(fold.state('joint', joint).takenOff).toBeUndefined();
});
