import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { openCount } from './count.ts';
import { days } from './days.ts';
import { kills } from './kills.ts';
import { power } from './power.ts';
import { tamper } from './tamper.ts';

// A sample of `npm run torture`: the same code, fewer rounds, on the bundle that `npm test` has built.
test('the bundle is there', () => {
  expect(existsSync('packages/cli/dist/clampwright.mjs')).toBe(true);
});

test.each([
  ['the server killed twenty times while phones write', (count) => kills(count, 20, 2)],
  ['simulated days', (count) => days(count, 6, Number.POSITIVE_INFINITY)],
  ['power cut at any byte', (count) => power(count, 12)],
  ['tampered books and files', (count) => tamper(count, 200)],
] satisfies [string, (count: ReturnType<typeof openCount>) => Promise<void>][])('%s', { timeout: 180_000 }, async (_, run) => {
  const count = openCount();
  await run(count);
  expect(count.counts.passed).toBeGreaterThan(0);
  expect(count.counts.failed).toBe(0);
});
