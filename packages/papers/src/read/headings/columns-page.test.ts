import { expect, test } from 'vitest';
import { columnsPage } from './columns-page.ts';
import { lexiconOf } from './index.ts';

test('docs/columns.md says what is read', async () => {
  await expect(columnsPage()).toMatchFileSnapshot('../../../../../docs/columns.md');
});

test('no heading of one language means something else in another without being asked', () => {
  const { sure, unclear } = lexiconOf('joints');
  for (const heading of unclear.keys()) expect(sure.has(heading)).toBe(false);
  expect(unclear.get('durchmesser')).toEqual(['size', 'circle', 'bearingDiameter']);
});
