import { RULE_SETS } from '@clampwright/core';
import { bodySchemas } from '@clampwright/record';
import { LANGUAGES, type Language, loadWords } from '@clampwright/words';
import { expect, test } from 'vitest';
import { testPlan } from '../test-plan.ts';
import { kitRows } from '../told/kit-rows.ts';

/** Every word that a kind of entry allows and no other: `stall`, `use as is`. */
function words(schema: unknown): string[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const { enum: all } = schema as { enum?: unknown[] };
  return [...(all ?? []).filter((one) => typeof one === 'string'), ...Object.values(schema).flatMap(words)];
}
/** Never printed: what a device does with an earlier plan. */
const NOT_SAID = ['continue', 'stop'];

test.each(Object.keys(LANGUAGES) as Language[])(
  '%s has a word for all that a log entry can hold, and for every method',
  async (language) => {
    const { term } = await loadWords(language);
    if (language === 'en') return;
    const known = [...new Set(Object.values(bodySchemas()).flatMap(words))].filter((one) => !NOT_SAID.includes(one));
    expect(known.length).toBeGreaterThan(30);
    expect(known.filter((one) => term(one) === one && one !== 'inspector')).toEqual([]);
    expect(
      Object.values(RULE_SETS)
        .map(({ title }) => title)
        .filter((title) => term(title) === title),
    ).toEqual([]);
  },
);

test('a kit list in German has no English word of ours left', async () => {
  const words = await loadWords('de');
  const said = testPlan()
    .joints.flatMap(({ kit }) => kitRows(kit, words))
    .map(({ name }) => name)
    .join('\n');
  expect(said).toMatch(/Stecknuss: Schlüsselweite 41 mm/);
  expect(said).toMatch(/Schraube: HV M24 × 95 mm, 10\.9, Los K2/);
  expect(said).not.toMatch(/across flats|\blot\b|socket|marker|gauge/);
});
