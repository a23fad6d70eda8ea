import { expect, test } from 'vitest';
import { findThread } from '../fasteners/find-thread.ts';
import { mm } from '../quantity.ts';
import { RULE_SETS, type RuleSetId } from '../rules/index.ts';
import type { RuleSet } from '../rules/rule-set.ts';
import { jointWith, testJob } from '../test-job.ts';
import { lengthNotices } from './length-notices.ts';
import { planJob } from './plan-job.ts';

const found = findThread('M24');
if (!found.ok) throw new Error('M24');
const thread = found.value;
const said = (rule: RuleSetId, length: number, clamp: number, nutHeight?: number) =>
  lengthNotices(
    { thread, length: mm(length), clampThickness: mm(clamp) },
    (RULE_SETS[rule] as RuleSet).reach,
    nutHeight === undefined ? undefined : { nutHeight: mm(nutHeight) },
  ).map(({ code }) => code);

test('an M24 × 60 on 70 mm stops under every rule set, whether its nut is known or not', () => {
  for (const rule of Object.keys(RULE_SETS) as RuleSetId[]) {
    expect(said(rule, 60, 70)).toEqual(['bolt-below-clamp']);
    expect(said(rule, 60, 70, 21.5)).toHaveLength(1);
    expect(said(rule, 60, 70, 21.5)).not.toEqual(['clamp-below-thread']);
  }
});

test('EN 1090-2 wants one pitch beyond the nut: M24 HV on 48 mm needs 48 + 20 + 3 = 71', () => {
  expect(said('en1090-torque', 70, 48, 20)).toEqual(['bolt-too-short']);
  expect(said('de-reduced-combined', 70.9, 48, 20)).toEqual(['bolt-too-short']);
  expect(said('en1090-torque', 71, 48, 20)).toEqual([]);
});

test('elsewhere the nut must be full, and the pitch beyond it is only to be read', () => {
  expect(said('rcsc-turn-of-nut', 67, 48, 20)).toEqual(['bolt-too-short']);
  expect(said('flange-bolt-stress', 68, 48, 20)).toEqual(['clamp-below-thread']);
  expect(said('as-specified', 60, 48, 20)).toEqual(['clamp-below-thread']);
  expect(said('vdi-2230', 47, 48, 20)).toEqual(['bolt-below-clamp']);
});

test('where the nut is unknown, a bolt longer than its parts is not objected to', () => expect(said('en1090-torque', 71, 70)).toEqual([]));

test('the joint of a bolt that is too short is stopped, with the length it needs', () => {
  const plan = (length: number) =>
    planJob(testJob([jointWith('en1090-torque', { length: mm(length), clampThickness: mm(70) })])).joints[0]!;
  const short = plan(60);
  expect(short.verdict).toBe('stop');
  expect(short.reasons.find(({ code }) => code === 'bolt-too-short')?.params).toMatchObject({ needed: { value: 93 }, nut: { value: 20 } });
  expect(plan(95).reasons.map(({ code }) => code)).not.toContain('bolt-too-short');
});

test('a joint under EN 1090-2 whose system nobody named is asked, and no width across flats is printed for it', () => {
  const joint = (rule: string, system: 'plain' | 'HV') => planJob(testJob([jointWith(rule, { system })])).joints[0]!;
  expect(joint('en1090-torque', 'plain').verdict).toBe('stop');
  expect(joint('en1090-torque', 'plain').subgroups[0]!.acrossFlats).toBe(undefined);
  expect(joint('en1090-torque', 'HV').subgroups[0]!.acrossFlats).toBe(41);
  expect(joint('as-specified', 'plain').subgroups[0]!.acrossFlats).toBe(36);
});
