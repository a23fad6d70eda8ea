import type { Param } from '@clampwright/core';
import { IntlMessageFormat } from 'intl-messageformat';
import { type Language, localeOf } from '../language.ts';

export type Params = Readonly<Record<string, Extract<Param, string | number>>>;

/** Fills messages of one language; each is compiled once. */
export function filler(language: Language): (text: string, params?: Params) => string {
  const compiled = new Map<string, IntlMessageFormat>();
  return (text, params = {}) => {
    const message = compiled.get(text) ?? new IntlMessageFormat(text, localeOf(language));
    compiled.set(text, message);
    return String(message.format(params));
  };
}
