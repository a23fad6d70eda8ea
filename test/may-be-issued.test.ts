import { mayBeIssued, onlyWaits } from '@clampwright/core';
import { expect, test } from 'vitest';
import { planned } from './memory-folder.ts';

const HEAD = 'joint,rule set,layout,bolts,size,grade,system,clamped thickness [mm],lot,bolt 1,direction,seen from,pressurised,permit';
const joint = (row: string) => {
  const { plan, notices } = planned({ 'joints.csv': `${HEAD}\n${row}\n` });
  if (plan.joints.length === 0) throw new Error(JSON.stringify(notices));
  return plan.joints[0]!;
};

test('a joint that waits for a permit, and for nothing else, is issued with that hold', () => {
  const waits = joint('J,en1090-torque,ring,8,M20,10.9,HV,40,L1,top,cw,outside,yes,');
  expect(waits.reasons.map(({ code }) => code)).toContain('permit-missing');
  expect([waits.verdict, onlyWaits(waits), mayBeIssued(waits)]).toEqual(['stop', true, true]);
  const has = joint('J,en1090-torque,ring,8,M20,10.9,HV,40,L1,top,cw,outside,yes,PW-1');
  expect([has.verdict === 'stop', onlyWaits(has), mayBeIssued(has)]).toEqual([false, false, true]);
});

test('one that stops for more, or has no figures to tighten by, is not', () => {
  const wrong = joint('J,en1090-torque,ring,8,M21,10.9,HV,40,L1,top,cw,outside,yes,');
  expect([wrong.verdict, mayBeIssued(wrong)]).toEqual(['stop', false]);
  // a torque that only a test of the lot can tell
  const untested = joint('J,en1090-torque,ring,8,M20,10.9,HV,40,NO,top,cw,outside,,');
  expect([untested.verdict, mayBeIssued(untested)]).toEqual(['stop', false]);
});
