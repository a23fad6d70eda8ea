import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';
import { PAPER_DE } from './de.ts';
import { PAPER_ES } from './es.ts';
import { PAPER_PL } from './pl.ts';
import { PAPER_PT } from './pt.ts';
import { PRINTED_EN, type PrintedTexts } from './texts.ts';

const KEYS = Object.keys(PAPER_DE.printed) as (keyof PrintedTexts)[];

/** Parameters of a message, by name; an ICU fault throws. */
function parameters(text: string, language: string): string[] {
  const found = new Set<string>();
  const walk = (parts: readonly { type: number; value?: unknown; options?: Record<string, { value: never[] }> }[]) => {
    for (const part of parts) {
      // 0 is plain text, 7 the count inside a plural
      if (part.type !== 0 && part.type !== 7) found.add(String(part.value));
      for (const option of Object.values(part.options ?? {})) walk(option.value);
    }
  };
  walk(new IntlMessageFormat(text, language).getAst() as never);
  return [...found].sort();
}

describe.each([
  ['de', PAPER_DE],
  ['es', PAPER_ES],
  ['pl', PAPER_PL],
  ['pt', PAPER_PT],
] as const)('what papers say, %s', (language, { printed, terms }) => {
  test('names the same parameters as the English, and can be said', () => {
    for (const key of KEYS) expect(parameters(printed[key], language), key).toEqual(parameters(PRINTED_EN[key], 'en'));
  });
  test('differs from the English, but for names and signs', () => {
    const same = KEYS.filter((key) => printed[key] === PRINTED_EN[key] && /[a-z]{3}/.test(PRINTED_EN[key].replace(/\{[^}]*\}/g, '')));
    expect(same.length, same.join(', ')).toBeLessThan(12);
  });
  test('has the same words of plan and log as the others', () => {
    expect(Object.keys(terms).sort()).toEqual(Object.keys(PAPER_DE.terms).sort());
    expect(Object.values(terms).filter((text) => text.trim() === '')).toEqual([]);
  });
});
