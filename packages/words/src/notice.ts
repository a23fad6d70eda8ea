import type { Notice, Param, Place } from '@clampwright/core';
import { EN_NOTICES } from './en/index.ts';
import { placeTexts } from './en/place.ts';
import { type Language, localeOf } from './language.ts';
import { fill } from './message.ts';
import type { NoticeCatalogue, NoticeText } from './notice-texts.ts';
import type { UnitSystem } from './units.ts';

/** Says notices in one language. */
export interface NoticeWords {
  /** what is wrong, in the trade's words */
  readonly says: (notice: Notice, units?: UnitSystem) => string;
  /** what would mend it */
  readonly remedy: (notice: Notice, units?: UnitSystem) => string;
  /** where it was found: `joints.csv, row 14, column clamp length (read “abc”)`; in a workbook with sheet and letter */
  readonly whereabouts: (notice: Pick<Notice, 'place'>) => string;
}

/** Parameters that hold words of ours; all others hold names and figures of the reader's own. */
const SPOKEN = new Set([
  'what',
  'why',
  'problem',
  'method',
  'needed',
  'wanted',
  'verdict',
  'word',
  'rule',
  'field',
  'meaning',
  'candidates',
  'step',
  'open',
  'steps',
]);

/** Parameters that hold a figure rounded already, with its unit or without: `0.18`, `5.5 bar`. */
const FIGURES = new Set(['k', 'mean', 'low', 'high', 'rate', 'most', 'what', 'wanted']);
const FIGURE = /^(\d+)\.(\d+)( \S+)?$/;

/** Makes what says notices from the texts of a language; `terms` stand in the place of the English words that a notice carries. */
export function noticeWords(
  language: Language,
  { notices, place, terms }: Omit<NoticeCatalogue, 'terms'> & { readonly terms: Readonly<Record<string, string>> },
): NoticeWords {
  const term = (text: string): string =>
    terms[text] ??
    text
      .split(', ')
      .map((one) => terms[one] ?? one)
      .join(', ');
  const decimal = (0.5).toLocaleString(localeOf(language))[1]!;
  const param = (name: string, value: Param): Param => {
    if (typeof value !== 'string') return value;
    const word = SPOKEN.has(name) ? term(value) : value;
    return FIGURES.has(name) ? word.replace(FIGURE, `$1${decimal}$2$3`) : word;
  };
  const spoken = (params: Readonly<Record<string, Param>>) =>
    Object.fromEntries(Object.entries(params).map(([name, value]) => [name, param(name, value)]));
  const say =
    (part: keyof NoticeText) =>
    ({ code, params }: Notice, units?: UnitSystem): string => {
      const text: NoticeText | undefined = notices[code];
      // a newer server or plan may object to what this version has no words for
      return text === undefined ? code : fill(text[part], spoken(params), units, language);
    };
  const column = ({ sheet, column, letter }: Place) =>
    column && (sheet && letter ? fill(place['column of a workbook'], { letter, column }) : fill(place.column, { column }));
  return {
    says: say('says'),
    remedy: say('remedy'),
    whereabouts({ place: found }) {
      if (!found) return '';
      const { file, sheet, row, path, read } = found;
      const parts = [
        file,
        sheet && fill(place.sheet, { sheet }),
        row === undefined ? undefined : fill(place.row, { row }),
        column(found),
        path,
      ]
        .filter((part) => part !== undefined && part !== '')
        .join(', ');
      return read === undefined ? parts : fill(place['what was read'], { place: parts, read });
    },
  };
}

export const ENGLISH_CATALOGUE: NoticeCatalogue = { notices: EN_NOTICES, place: placeTexts, terms: {} };

/** Notices in English: on the terminal, and wherever no language was chosen. */
export const { says, remedy, whereabouts }: NoticeWords = noticeWords('en', ENGLISH_CATALOGUE);
