import { duties, YEARLY_SAMPLE } from '@clampwright/core';
import { expect, test } from 'vitest';
import { jointId, testWriter } from '../test-book.ts';
import { finishedJoints } from './finished-joints.ts';
import { openFold } from './fold.ts';

test('signed joints fall due from the day they were signed, or last retightened; others do not', () => {
  const fold = openFold();
  const writer = testWriter(1);
  fold.add(writer.write('joint-signed', { joint: jointId(1), as: 'crew' }, { day: '2025-06-30' }));
  fold.add(writer.write('joint-signed', { joint: jointId(2), as: 'crew' }, { day: '2026-03-02' }));
  fold.add(writer.write('retightening-done', { joint: jointId(2), moved: 0 }, { day: '2026-08-31' }));
  fold.add(writer.write('joint-signed', { joint: jointId(3), as: 'inspector' }, { day: '2026-03-02' }));
  const joints = finishedJoints(fold);
  expect(joints).toEqual([
    { tag: jointId(1), bolts: 0, finished: '2025-06-30' },
    { tag: jointId(2), bolts: 0, finished: '2026-03-02', lastLookedAt: '2026-08-31' },
  ]);
  expect(duties(joints, YEARLY_SAMPLE, '2026-11-25' as never).map(({ due, overdue }) => [due, overdue])).toEqual([
    ['2026-06-30', true],
    ['2027-08-31', false],
  ]);
});
