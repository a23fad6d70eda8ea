import type { NOTICE_GROUPS, NoticeCode } from '@clampwright/core';

/** What a notice says and what would mend it; ICU message format, the parameters by name. */
export interface NoticeText {
  readonly says: string;
  readonly remedy: string;
}

/** The texts of one group of notices: complete, nothing else. */
export type NoticeTexts<G extends keyof typeof NOTICE_GROUPS> = {
  readonly [K in keyof (typeof NOTICE_GROUPS)[G] & NoticeCode]: NoticeText;
};
