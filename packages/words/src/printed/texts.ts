import type { AssemblyCheck, InspectionMethod, SafeStop, Source } from '@clampwright/core';
import type { TradeTexts } from '../app/trade.ts';
import { CARD_TEXTS } from '../en/card.ts';
import { DRAWING_TEXTS } from '../en/drawing.ts';
import { ENTRY_TEXTS } from '../en/entry.ts';
import { FAULT_TEXTS } from '../en/faults.ts';
import { FORCE_TEXTS } from '../en/forces.ts';
import { PAPER_TEXTS } from '../en/paper.ts';
import { REPORT_TEXTS } from '../en/report.ts';
import { TOLD_TEXTS } from '../en/told.ts';
import type { NoticeCatalogue } from '../notice-texts.ts';

/** Every fixed text that tells of a plan, a card or the log, on paper and on the planner's screen. */
export const PRINTED_EN = {
  ...TOLD_TEXTS,
  ...CARD_TEXTS,
  ...DRAWING_TEXTS,
  ...PAPER_TEXTS,
  ...REPORT_TEXTS,
  ...ENTRY_TEXTS,
  ...FORCE_TEXTS,
  ...FAULT_TEXTS,
} as const;
export type PrintedKey = keyof typeof PRINTED_EN;

/** Said by the trade's words already. */
type OfTrade =
  | `checks.${AssemblyCheck}`
  | `work.safe-stop.${SafeStop}`
  | `inspection.method.${InspectionMethod}`
  | `source.${Exclude<Source['provenance'], 'published'>}`;

/** The printed texts of one language, as its file holds them. */
export type PrintedTexts = Readonly<Record<Exclude<PrintedKey, OfTrade>, string>>;

/** Its part that tells of forces. */
export type ForceTexts = Readonly<Record<keyof typeof FORCE_TEXTS, string>>;

/** All that papers say in one language. */
export interface PaperTexts {
  readonly printed: PrintedTexts;
  readonly trade: TradeTexts;
  /** words that plan and log keep in English: causes, ends, kit; by that word */
  readonly terms: Readonly<Record<string, string>>;
  readonly notice: NoticeCatalogue;
}
