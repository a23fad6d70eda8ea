import { expect, test } from 'vitest';
import { METRIC_THREADS } from './metric-threads.ts';
import { stressArea } from './thread.ts';

const printed = METRIC_THREADS.filter((thread) => thread.printedStressArea !== undefined);

test.each(printed.map((thread) => [thread.designation, thread] as const))(
  'the printed stress area of %s is the formula to three figures',
  (_, thread) => {
    expect(Number(stressArea(thread.diameter, thread.pitch).toPrecision(3))).toBe(thread.printedStressArea);
  },
);

test('no designation stands in the list twice', () => {
  expect(new Set(METRIC_THREADS.map(({ designation }) => designation)).size).toBe(METRIC_THREADS.length);
});

test('a fine pitch is finer than the coarse pitch of its diameter', () => {
  for (const thread of METRIC_THREADS.filter(({ series }) => series === 'fine')) {
    const coarse = METRIC_THREADS.find(({ series, diameter }) => series === 'coarse' && diameter === thread.diameter);
    if (coarse) expect(thread.pitch).toBeLessThan(coarse.pitch);
  }
});
