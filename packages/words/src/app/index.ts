/** What the app says, in the reader's language. English is there at once; the others are loaded when they are asked for. */
import type {
  AssemblyCheck,
  CautionCode,
  EndSignal,
  InspectionMethod,
  SafeStop,
  Source,
  StepName,
  StepPlan,
  ValveCaution,
} from '@clampwright/core';
import { clauseText } from '../clause-text.ts';
import { type Language, localeOf } from '../language.ts';
import { ENGLISH_CATALOGUE, type NoticeWords, noticeWords } from '../notice.ts';
import type { NoticeCatalogue } from '../notice-texts.ts';
import { settingText } from '../setting-text.ts';
import { APP_EN, type AppKey, type AppTexts } from './en.ts';
import { filler, type Params } from './filler.ts';
import type { Role, TradeTexts } from './trade.ts';
import { TRADE_EN } from './trade-en.ts';

export { LANGUAGES, type Language } from '../language.ts';
export type { NoticeWords } from '../notice.ts';
export type { AppKey } from './en.ts';

export interface Texts {
  readonly app: AppTexts;
  readonly trade: TradeTexts;
  readonly notice: NoticeCatalogue;
}
const ENGLISH_TEXTS: Texts = { app: APP_EN, trade: TRADE_EN, notice: ENGLISH_CATALOGUE };

async function together(app: Promise<AppTexts>, trade: Promise<TradeTexts>, notice: Promise<NoticeCatalogue>): Promise<Texts> {
  return { app: await app, trade: await trade, notice: await notice };
}

const LOADERS: { readonly [L in Language]: () => Promise<Texts> } = {
  en: async () => ENGLISH_TEXTS,
  de: () =>
    together(
      import('./de.ts').then((file) => file.APP_DE),
      import('./trade-de.ts').then((file) => file.TRADE_DE),
      import('../de/index.ts').then((file) => file.NOTICES_DE),
    ),
  es: () =>
    together(
      import('./es.ts').then((file) => file.APP_ES),
      import('./trade-es.ts').then((file) => file.TRADE_ES),
      import('../es/index.ts').then((file) => file.NOTICES_ES),
    ),
  pt: () =>
    together(
      import('./pt.ts').then((file) => file.APP_PT),
      import('./trade-pt.ts').then((file) => file.TRADE_PT),
      import('../pt/index.ts').then((file) => file.NOTICES_PT),
    ),
  pl: () =>
    together(
      import('./pl.ts').then((file) => file.APP_PL),
      import('./trade-pl.ts').then((file) => file.TRADE_PL),
      import('../pl/index.ts').then((file) => file.NOTICES_PL),
    ),
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
  /** a setting as the tool shows it: its labels, with gear and step in the reader's language */
  readonly settingText: (setting: string) => string;
  readonly caution: (code: CautionCode) => string;
  readonly valveCaution: (code: ValveCaution) => string;
  readonly check: (check: AssemblyCheck) => string;
  readonly rest: (where: SafeStop) => string;
  /** how a joint is looked at afterwards */
  readonly inspection: (method: InspectionMethod) => string;
  /** who signs */
  readonly role: (as: string) => string;
  /** the title of a rule set, as the plan holds it */
  readonly rule: (title: string) => string;
  /** `EN 1090-2:2018, 8.5.3 (from memory: confirm in the standard)` */
  readonly source: (source: Source) => string;
  /** a moment as the reader writes it, in the time of the place: day and time, and the time alone */
  readonly moment: (at: string | number) => string;
  readonly time: (at: Date) => string;
  /** a figure in the reader's way of writing numbers */
  readonly figure: (value: number, digits: number) => string;
}

export interface Speaker {
  readonly say: Say;
  readonly trade: Trade;
  readonly notice: NoticeWords;
}

export function speaker(language: Language, { app, trade, notice }: Texts): Speaker {
  const locale = localeOf(language);
  const fill = filler(language);
  const figure = (value: number, digits: number) =>
    value.toLocaleString(locale, { minimumFractionDigits: digits, maximumFractionDigits: digits });
  const term = (word: string): string => (notice.terms as Readonly<Record<string, string>>)[word] ?? word;
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
      setting: ({ end }, setting) => (setting === undefined ? trade.noSetting[end.kind] : settingText(setting, trade)),
      settingText: (setting) => settingText(setting, trade),
      caution: (code) => trade.caution[code],
      valveCaution: (code) => trade.valveCaution[code],
      check: (check) => trade.check[check],
      rest: (where) => trade.rest[where],
      inspection: (method) => trade.inspection[method],
      role: (as) => trade.role[as as Role] ?? as,
      rule: term,
      source({ standard, edition, clause, provenance }) {
        const from = standard === provenance || provenance === 'published' ? '' : trade.provenance[provenance];
        return `${term(standard)}${edition === undefined ? '' : `:${edition}`}${clause === undefined ? '' : `, ${clauseText(clause, language)}`}${from === '' ? '' : ` (${from})`}`;
      },
      moment: (at) => new Date(at).toLocaleString(locale),
      time: (at) => at.toLocaleTimeString(locale),
      figure,
    },
    notice: noticeWords(language, { ...notice, terms: { ...notice.terms, ...trade.step } }),
  };
}

export const ENGLISH: Speaker = speaker('en', ENGLISH_TEXTS);
