import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { LANGUAGES, type Language, loadTexts } from '@clampwright/words/app';
import { IntlMessageFormat } from 'intl-messageformat';
import { describe, expect, test } from 'vitest';

const english = (await loadTexts('en')).app;
const keys = Object.keys(english) as (keyof typeof english)[];

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

describe.each(Object.keys(LANGUAGES) as Language[])('the texts of the app, %s', (language) => {
  test('name the same parameters as the English, and can be said', async () => {
    const { app } = await loadTexts(language);
    for (const key of keys) expect(parameters(app[key], language), key).toEqual(parameters(english[key], 'en'));
  });
  test('leave nothing empty', async () => {
    const { app, trade } = await loadTexts(language);
    expect(Object.entries(app).filter(([, text]) => text.trim() === '')).toEqual([]);
    expect(
      Object.values(trade)
        .flatMap((group) => Object.values(group as Record<string, string>))
        .filter((text) => text.trim() === ''),
    ).toEqual([]);
  });
  test('differ from the English, but for names and signs', async () => {
    if (language === 'en') return;
    const { app } = await loadTexts(language);
    const same = keys.filter((key) => app[key] === english[key] && /[a-z]{3}/.test(english[key].replace(/\{[^}]*\}/g, '')));
    expect(same.length, same.join(', ')).toBeLessThan(25);
  });
});

test('every text is said somewhere', () => {
  const folder = 'packages/web/src';
  const source = (readdirSync(folder, { recursive: true }) as string[])
    .filter((path) => /\.tsx?$/.test(path) && statSync(join(folder, path)).isFile() && !path.endsWith('.test.ts'))
    .map((path) => readFileSync(join(folder, path), 'utf8'))
    .join('\n');
  const templates = [...source.matchAll(/`([a-z]+\.[a-z-]*)\$\{/g)].map(([, beginning]) => beginning!);
  expect(keys.filter((key) => !source.includes(`'${key}'`) && !templates.some((one) => key.startsWith(one)))).toEqual([]);
});
