import type { PaperOptions } from '@clampwright/papers/out';
import { LANGUAGES, type Language, loadWords } from '@clampwright/words';
import { type Command, Option } from 'commander';

/** What a paper speaks, and what stands smaller beneath it. */
export interface LanguageOptions {
  readonly language?: Language;
  readonly and?: Language;
}

const CODES = Object.keys(LANGUAGES);

/** The same two options for every verb that writes a paper. */
export const speaking = (command: Command): Command =>
  command
    .addOption(new Option('--language <code>', 'language of the paper').choices(CODES).default('en'))
    .addOption(new Option('--and <code>', 'a second language, smaller beneath the first').choices(CODES));

/** The words that were asked for; one language asked twice is one language. */
export async function languages({ language = 'en', and }: LanguageOptions): Promise<NonNullable<PaperOptions['languages']>> {
  const first = await loadWords(language);
  return and === undefined || and === language ? [first] : [first, await loadWords(and)];
}
