import type { Cited, Source, Verdict } from '@clampwright/core';
import { ENGLISH_WORDS } from './words.ts';

// Pages and terminal speak English: the words a paper would say in that language.
export const { caution: cautionText, step: stepText, end: endText, setting: settingLine, datum: datumText } = ENGLISH_WORDS;

export const verdictText = (verdict: Verdict): string => ENGLISH_WORDS.label(`verdict-word.${verdict}`);
export const patternText = (pattern: 'star' | 'outwards' | 'engineer'): string => ENGLISH_WORDS.label(`pattern.${pattern}`);
export const turnedText = (turned: 'nut' | 'head'): string => ENGLISH_WORDS.label(`turned.${turned}`);
export const sourceText: (source: Source) => string = ENGLISH_WORDS.source;
export const citedSource: (cited: Cited<unknown>) => string = ENGLISH_WORDS.cited;
