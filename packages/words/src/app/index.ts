/** What the app says, in the reader's language. English is there at once; the others are loaded when they are asked for. */

import type { AssemblyCheck, CautionCode, EndSignal, SafeStop, StepName, StepPlan, ValveCaution } from '@clampwright/core';
import { type Language, localeOf } from '../language.ts';
import { APP_EN, type AppKey, type AppTexts } from './en.ts';
import { filler, type Params } from './filler.ts';
import type { TradeTexts } from './trade.ts';
import { TRADE_EN } from './trade-en.ts';

export { LANGUAGES, type Language } from '../language.ts';
export type { AppKey } from './en.ts';

export interface Texts {
  readonly app: AppTexts;
  readonly trade: TradeTexts;
}
const ENGLISH_TEXTS: Texts = { app: APP_EN, trade: TRADE_EN };

const LOADERS: { readonly [L in Language]: () => Promise<Texts> } = {
  en: async () => ENGLISH_TEXTS,
  de: async () => ({ app: (await import('./de.ts')).APP_DE, trade: (await import('./trade-de.ts')).TRADE_DE }),
  es: async () => ({ app: (await import('./es.ts')).APP_ES, trade: (await import('./trade-es.ts')).TRADE_ES }),
  pt: async () => ({ app: (await import('./pt.ts')).APP_PT, trade: (await import('./trade-pt.ts')).TRADE_PT }),
  pl: async () => ({ app: (await import('./pl.ts')).APP_PL, trade: (await import('./trade-pl.ts')).TRADE_PL }),
};
export const loadTexts = (language: Language): Promise<Texts> => LOADERS[language]();

/** Says a text of the app. */
export type Say = (key: AppKey, params?: Params) => string;

/** Says the plan's words. */
export interface Trade {
  readonly step: (name: string) => string;
  readonly end: (end: EndSignal) => string;
  /** the setting as the tool shows it, or what stands in its place */
  readonly setting: (step: StepPlan, setting?: string) => string;
  readonly caution: (code: CautionCode) => string;
  readonly valveCaution: (code: ValveCaution) => string;
  readonly check: (check: AssemblyCheck) => string;
  readonly rest: (where: SafeStop) => string;
  /** a figure in the reader's way of writing numbers */
  readonly figure: (value: number, digits: number) => string;
}

export interface Speaker {
  readonly say: Say;
  readonly trade: Trade;
}

export function speaker(language: Language, { app, trade }: Texts): Speaker {
  const locale = localeOf(language);
  const fill = filler(language);
  const figure = (value: number, digits: number) =>
    value.toLocaleString(locale, { minimumFractionDigits: digits, maximumFractionDigits: digits });
  return {
    say: (key, params) => fill(app[key], params),
    trade: {
      step: (name) => trade.step[name as StepName] ?? name,
      end: (end) =>
        end.kind === 'mark at angle'
          ? fill(trade.end[end.kind], { angle: `${figure((end.angle * 180) / Math.PI, 0)}°` })
          : end.kind === 'feeler refused'
            ? fill(trade.end[end.kind], { thickness: `${figure(end.thickness, 2)} mm` })
            : trade.end[end.kind],
      setting: ({ end }, setting) => setting ?? trade.noSetting[end.kind],
      caution: (code) => trade.caution[code],
      valveCaution: (code) => trade.valveCaution[code],
      check: (check) => trade.check[check],
      rest: (where) => trade.rest[where],
      figure,
    },
  };
}

export const ENGLISH: Speaker = speaker('en', ENGLISH_TEXTS);
