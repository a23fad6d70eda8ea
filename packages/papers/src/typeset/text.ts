import { ENGLISH_WORDS, type Words } from '@clampwright/words';

/** A text of a paper: as it is, or as each language says it. */
export type Text = string | ((words: Words) => string);

/** The languages of a paper: the first is set large, a second smaller beneath it. */
export type Languages = readonly [first: Words, second?: Words];

export const ENGLISH_ALONE: Languages = [ENGLISH_WORDS];

/** A fixed text in whatever languages the paper speaks. */
export const said =
  (...what: Parameters<Words['label']>): Text =>
  ({ label }) =>
    label(...what);

const inWords = (text: Text, words: Words) => (typeof text === 'string' ? text : text(words));

/** What the first language says, and the second where it says it otherwise. */
export function inBoth(text: Text, [first, second]: Languages): readonly [string, string?] {
  const one = inWords(text, first);
  if (second === undefined || typeof text === 'string') return [one];
  const other = inWords(text, second);
  return other === one ? [one] : [one, other];
}

/** Both languages on one line, where there is no room for two. */
export const onOneLine = (text: Text, languages: Languages): string => inBoth(text, languages).join(' / ');
