import type { Param } from '@clampwright/core';
import { IntlMessageFormat } from 'intl-messageformat';
import type { Language } from './index.ts';

export type Params = Readonly<Record<string, Extract<Param, string | number>>>;

/** Portuguese as in Portugal: of the two, zero takes the plural there. */
const LOCALES: Readonly<Partial<Record<Language, string>>> = { pt: 'pt-PT' };
export const localeOf = (language: Language): string => LOCALES[language] ?? language;

/** Fills messages of one language; each is compiled once. */
export function filler(language: Language): (text: string, params?: Params) => string {
  const compiled = new Map<string, IntlMessageFormat>();
  return (text, params = {}) => {
    const message = compiled.get(text) ?? new IntlMessageFormat(text, localeOf(language));
    compiled.set(text, message);
    return String(message.format(params));
  };
}
