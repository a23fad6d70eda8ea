import type { Notice, Param, Place } from '@clampwright/core';
import { EN_NOTICES } from './en/index.ts';
import { placeTexts } from './en/place.ts';
import type { Language } from './language.ts';
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

/** `words` are put in the place of English ones that a notice carries: the catalogue's own, and those of the plan. */
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
  const spoken = (params: Readonly<Record<string, Param>>) =>
    Object.fromEntries(
      Object.entries(params).map(([name, value]) => [name, SPOKEN.has(name) && typeof value === 'string' ? term(value) : value]),
    );
  const say =
    (part: keyof NoticeText) =>
    ({ code, params }: Notice, units?: UnitSystem) =>
      fill(notices[code][part], spoken(params), units, language);
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
