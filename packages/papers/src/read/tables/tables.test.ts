import { LANGUAGES, type Language, loadTexts } from '@clampwright/words/app';
import { expect, test } from 'vitest';
import type { Field } from '../field.ts';
import { TABLES } from './index.ts';

const OTHERS = (Object.keys(LANGUAGES) as Language[]).filter((language) => language !== 'en');

test.each(OTHERS)('what a table or a column means can be said in every language, %s', async (language) => {
  const terms: Readonly<Record<string, string>> = (await loadTexts(language)).notice.terms;
  const meanings = Object.values(TABLES).flatMap(({ says, fields }) => [says, ...Object.values<Field>(fields).map((field) => field.says)]);
  expect(meanings.filter((meaning) => !terms[meaning])).toEqual([]);
});
