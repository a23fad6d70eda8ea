import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DISPUTED, judge, type Row, tally } from './index.ts';

const folder = join(import.meta.dirname, '../rows');
const rows = readdirSync(folder)
  .filter((name) => name.endsWith('.jsonl'))
  .flatMap((name) =>
    readFileSync(join(folder, name), 'utf8')
      .split('\n')
      .filter(Boolean)
      .map((line) => JSON.parse(line) as Row),
  );
const results = rows.map(judge);

describe('the engine against the published rows that ship', () => {
  test.each(results.filter(({ judgement }) => judgement === 'disagreed').map(({ row, found }) => [row.id, found, row] as const))(
    '%s',
    (_id, found, row) => {
      expect({ found, source: row.source }).toEqual({ found: row.expected, source: row.source });
    },
  );
  test('no row has an evaluator that fails on it', () => {
    expect(
      results.filter(({ problem }) => problem).map(({ row, problem }) => `${row.id} ${row.topic}/${row.quantity}: ${problem}`),
    ).toEqual([]);
  });
  test('at least 70 % of the rows that are the product’s are evaluated', () => {
    const { all } = tally(results);
    const ours = rows.length - all["not the product's"];
    expect((all.agreed + all.disagreed + all.disputed) / ours).toBeGreaterThanOrEqual(0.7);
  });
  test('every disputed id is a row that disagrees, and has its argument in disputed.md', () => {
    const page = readFileSync(join(import.meta.dirname, 'disputed.md'), 'utf8');
    for (const id of Object.keys(DISPUTED)) {
      expect(results.find(({ row }) => row.id === id)?.judgement).toBe('disputed');
      expect(page).toContain(`## ${id}`);
    }
  });
});
