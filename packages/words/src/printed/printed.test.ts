import { describe, expect, test } from 'vitest';
import { parametersOf } from '../test-messages.ts';
import { PAPER_DE } from './de.ts';
import { PAPER_ES } from './es.ts';
import { PAPER_PL } from './pl.ts';
import { PAPER_PT } from './pt.ts';
import { PRINTED_EN, type PrintedTexts } from './texts.ts';

const KEYS = Object.keys(PAPER_DE.printed) as (keyof PrintedTexts)[];

describe.each([
  ['de', PAPER_DE],
  ['es', PAPER_ES],
  ['pl', PAPER_PL],
  ['pt', PAPER_PT],
] as const)('what papers say, %s', (language, { printed, terms }) => {
  test('names the same parameters as the English, and can be said', () => {
    for (const key of KEYS) expect(parametersOf(printed[key], language), key).toEqual(parametersOf(PRINTED_EN[key], 'en'));
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
