import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { LANGUAGES, type Language, loadTexts } from '@clampwright/words/app';
import { loadOfficeTexts } from '@clampwright/words/office';
import { parametersOf } from '@clampwright/words/test-messages';
import { describe, expect, test } from 'vitest';

/** What the whole app says, and what the office says beside it. */
const CATALOGUES: Readonly<Record<string, (language: Language) => Promise<Readonly<Record<string, string>>>>> = {
  app: async (language) => (await loadTexts(language)).app,
  office: loadOfficeTexts,
};
const english = Object.fromEntries(
  await Promise.all(Object.entries(CATALOGUES).map(async ([name, load]) => [name, await load('en')] as const)),
);
const cases = Object.keys(CATALOGUES).flatMap((name) =>
  (Object.keys(LANGUAGES) as Language[]).map((language) => [name, language] as const),
);

describe.each(cases)('the texts of the %s, %s', (name, language) => {
  const first = english[name]!;
  test('name the same parameters as the English, and can be said', async () => {
    const texts = await CATALOGUES[name]!(language);
    for (const [key, text] of Object.entries(first)) expect(parametersOf(texts[key]!, language), key).toEqual(parametersOf(text, 'en'));
  });
  test('leave nothing empty', async () => {
    expect(Object.entries(await CATALOGUES[name]!(language)).filter(([, text]) => text.trim() === '')).toEqual([]);
  });
  test('differ from the English, but for names and signs', async () => {
    if (language === 'en') return;
    const texts = await CATALOGUES[name]!(language);
    const same = Object.keys(first).filter((key) => texts[key] === first[key] && /[a-z]{3}/.test(first[key]!.replace(/\{[^}]*\}/g, '')));
    expect(same.length, same.join(', ')).toBeLessThan(25);
  });
});

test.each(Object.keys(LANGUAGES) as Language[])('the trade’s words leave nothing empty, %s', async (language) => {
  const { trade } = await loadTexts(language);
  expect(
    Object.values(trade)
      .flatMap((group) => Object.values(group as Record<string, string>))
      .filter((text) => text.trim() === ''),
  ).toEqual([]);
});

test('no text stands in both catalogues', () => {
  expect(Object.keys(english.office!).filter((key) => key in english.app!)).toEqual([]);
});

test('every text is said somewhere', () => {
  const folder = 'packages/web/src';
  const source = (readdirSync(folder, { recursive: true }) as string[])
    .filter((path) => /\.tsx?$/.test(path) && statSync(join(folder, path)).isFile() && !path.endsWith('.test.ts'))
    .map((path) => readFileSync(join(folder, path), 'utf8'))
    .join('\n');
  const templates = [...source.matchAll(/`([a-z]+\.[a-z-]*)\$\{/g)].map(([, beginning]) => beginning!);
  const keys = Object.values(english).flatMap((texts) => Object.keys(texts));
  expect(keys.filter((key) => !source.includes(`'${key}'`) && !templates.some((one) => key.startsWith(one)))).toEqual([]);
});
