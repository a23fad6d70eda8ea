import type { CautionCode, Cited, Datum, EndSignal, Measure, Param, Source, StepName, StepPlan } from '@clampwright/core';
import { TRADE_EN } from './app/trade-en.ts';
import { clauseText } from './clause-text.ts';
import type { Language } from './language.ts';
import { fill } from './message.ts';
import { ENGLISH_CATALOGUE, type NoticeWords, noticeWords } from './notice.ts';
import { type PaperTexts, PRINTED_EN, type PrintedKey } from './printed/texts.ts';
import { settingText } from './setting-text.ts';
import { say, type UnitSystem } from './units.ts';

type Params = Readonly<Record<string, Param>>;

/** What a paper says, in one language; a paper in two languages asks two of these. */
export interface Words extends NoticeWords {
  readonly language: Language;
  /** a fixed text */
  readonly label: (key: PrintedKey, params?: Params, units?: UnitSystem) => string;
  readonly caution: (code: CautionCode) => string;
  readonly step: (name: StepName) => string;
  /** how the crew knows the step is finished */
  readonly end: (end: EndSignal, units?: UnitSystem) => string;
  /** the setting as the tool shows it, or what stands in its place */
  readonly setting: (step: StepPlan) => string;
  /** a setting as it was entered or chosen, with gear and step in this language */
  readonly settingText: (setting: string) => string;
  /** where bolt 1 is, which way numbering runs and from where one looks */
  readonly datum: (datum: Datum | undefined) => string;
  /** `EN 1090-2:2018, 8.5.3 (from memory: confirm in the standard)` */
  readonly source: (source: Source) => string;
  readonly cited: (cited: Cited<unknown>) => string;
  /** a word that plan and log keep in English: a role, a cause, the title of a method */
  readonly term: (word: string) => string;
  /** number and unit */
  readonly measure: (measure: Measure, units?: UnitSystem) => string;
}

/** Makes the words of a language from its texts. */
function wordsOf(language: Language, { printed, trade, terms, notice }: PaperTexts): Words {
  const inTrade = (group: string, texts: Readonly<Record<string, string>>) =>
    Object.fromEntries(Object.entries(texts).map(([name, text]) => [`${group}.${name}`, text]));
  const labels: Readonly<Record<string, string>> = {
    ...printed,
    ...inTrade('checks', trade.check),
    ...inTrade('work.safe-stop', trade.rest),
    ...inTrade('inspection.method', trade.inspection),
    ...inTrade('source', trade.provenance),
  };
  const known: Readonly<Record<string, string>> = { ...notice.terms, ...trade.role, ...terms };
  const { says, remedy, whereabouts } = noticeWords(language, { ...notice, terms: { ...notice.terms, ...trade.step } });
  const label: Words['label'] = (key, params = {}, units) => fill(labels[key]!, params, units, language);
  const term = (word: string) => known[word] ?? word;
  const source = ({ standard, edition, clause, provenance }: Source): string => {
    const from = provenance === 'published' ? '' : trade.provenance[provenance];
    const named = standard === provenance && from !== '' ? from : term(standard);
    const after = standard === provenance || from === '' ? '' : ` (${from})`;
    return `${named}${edition === undefined ? '' : `:${edition}`}${clause === undefined ? '' : `, ${clauseText(clause, language)}`}${after}`;
  };
  return {
    language,
    label,
    says,
    remedy,
    whereabouts,
    caution: (code) => trade.caution[code],
    step: (name) => trade.step[name],
    end(end, units) {
      const text = trade.end[end.kind];
      if (end.kind === 'mark at angle') return fill(text, { angle: { dimension: 'angle', value: end.angle } }, units, language);
      if (end.kind === 'feeler refused') return fill(text, { thickness: { dimension: 'length', value: end.thickness } }, units, language);
      return text;
    },
    setting: ({ setting, end }) => (setting ? settingText(setting.text, trade) : trade.noSetting[end.kind]),
    settingText: (setting) => settingText(setting, trade),
    datum: (datum) =>
      datum
        ? label('datum.told', { boltOne: datum.boltOne, direction: term(datum.direction), from: datum.viewedFrom })
        : label('datum.none'),
    source,
    cited: (cited) => source(cited.source),
    term,
    measure: (measure, units) => say(measure, units, language),
  };
}

export const ENGLISH_WORDS: Words = wordsOf('en', { printed: PRINTED_EN, trade: TRADE_EN, terms: {}, notice: ENGLISH_CATALOGUE });

const LOADERS: { readonly [L in Exclude<Language, 'en'>]: () => Promise<PaperTexts> } = {
  de: async () => (await import('./printed/de.ts')).PAPER_DE,
  es: async () => (await import('./printed/es.ts')).PAPER_ES,
  pl: async () => (await import('./printed/pl.ts')).PAPER_PL,
  pt: async () => (await import('./printed/pt.ts')).PAPER_PT,
};

/** The words of a language; English is there at once, the others are loaded when they are asked for. */
export const loadWords = async (language: Language): Promise<Words> =>
  language === 'en' ? ENGLISH_WORDS : wordsOf(language, await LOADERS[language]());
