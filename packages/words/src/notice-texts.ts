import type { NOTICE_GROUPS, NoticeCode } from '@clampwright/core';
import type { Terms } from './en/terms.ts';

/** What a notice says and what would mend it; ICU message format, the parameters by name. */
export interface NoticeText {
  readonly says: string;
  readonly remedy: string;
}

/** The texts of one group of notices: complete, nothing else. */
export type NoticeTexts<G extends keyof typeof NOTICE_GROUPS> = {
  readonly [K in keyof (typeof NOTICE_GROUPS)[G] & NoticeCode]: NoticeText;
};

/** How a place in the input is named. */
export type PlaceTexts = Readonly<Record<'sheet' | 'row' | 'column' | 'column of a workbook' | 'what was read', string>>;

/** All that notices say in one language. */
export interface NoticeCatalogue {
  readonly notices: Readonly<Record<NoticeCode, NoticeText>>;
  readonly place: PlaceTexts;
  /** none in English, in which they are written */
  readonly terms: Partial<Terms>;
}
