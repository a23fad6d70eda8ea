import type { Words } from '@clampwright/words';
import type { Languages, Text } from '../typeset/text.ts';

/** A name and what belongs to it, as on a data sheet, with the source of the figure where it has one. */
export interface ToldFact {
  readonly name: string;
  readonly text: string;
  readonly source?: string;
  /** the figure a reader looks for first */
  readonly leading?: string;
}

/** Facts that are known; what is not has no line. */
export const known = (facts: readonly (ToldFact | undefined | false)[]): ToldFact[] =>
  facts.filter((one) => one !== undefined && one !== false);

/** Facts as pairs a sheet can set in its languages; without their sources, which stand in the annex. */
export const factPairs = (make: (words: Words) => readonly ToldFact[], [first]: Languages): (readonly [Text, Text])[] =>
  make(first).map((_, at) => [(words) => make(words)[at]!.name, (words) => factText(make(words)[at]!)]);

/** The leading figure and what is said of it. */
export const factText = ({ leading, text }: ToldFact): string => [leading, text].filter((one) => one !== undefined).join(' ');
