import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { type InteractionCase, judgeCase } from './interaction-case.ts';

// finite-element truth made with the general-purpose solver CalculiX 2.20; see rows/interaction
const folder = join(import.meta.dirname, '../rows/interaction');
const cases = readdirSync(folder).map((name) => JSON.parse(readFileSync(join(folder, name), 'utf8')) as InteractionCase);
const results = cases.map((one) => ({ one, result: judgeCase(one) }));

describe('elastic interaction against finite elements', () => {
  test.each(results.map(({ one, result }) => [one.id, one.bolts.target_N, result] as const))(
    '%s: play-back and one-pass targets follow the given matrix to 1e-6 and 0.05 N',
    (_id, target, { givenN }) => {
      expect(givenN).toBeLessThanOrEqual(1e-6 * target + 0.05);
    },
  );
  test.each(results.map(({ result }) => [result.id, result.modelPercent] as const))(
    '%s: final forces from dimensions alone lie within 4 %% of target',
    (_id, percent) => {
      expect(percent).toBeLessThanOrEqual(4);
    },
  );
  test('half of the joints lie within 2 %', () => {
    const sorted = results.map(({ result }) => result.modelPercent).sort((a, b) => a - b);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeLessThanOrEqual(2);
  });
});
