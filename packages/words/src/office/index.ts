/** What the office says: loaded with its pages, so that a crew's phone carries none of it. */

import { filler, type Params } from '../app/filler.ts';
import type { AppKey, Language, Say } from '../app/index.ts';
import { OFFICE_EN, type OfficeKey, type OfficeTexts } from './en.ts';

export type { OfficeKey } from './en.ts';

const LOADERS: { readonly [L in Language]: () => Promise<OfficeTexts> } = {
  en: async () => OFFICE_EN,
  de: async () => (await import('./de.ts')).OFFICE_DE,
  es: async () => (await import('./es.ts')).OFFICE_ES,
  pt: async () => (await import('./pt.ts')).OFFICE_PT,
  pl: async () => (await import('./pl.ts')).OFFICE_PL,
};
export const loadOfficeTexts = (language: Language): Promise<OfficeTexts> => LOADERS[language]();

/** Says a text of the office, or of the app around it. */
export type OfficeSay = (key: OfficeKey | AppKey, params?: Params) => string;

export function officeSay(language: Language, texts: OfficeTexts, app: Say): OfficeSay {
  const fill = filler(language);
  const known: Readonly<Record<string, string>> = texts;
  return (key, params) => {
    const text = known[key];
    return text === undefined ? app(key as AppKey, params) : fill(text, params);
  };
}
