import type { Level, Param } from '@clampwright/core';
import { AROUND_TEXTS } from './en/around-page.ts';
import { CARD_TEXTS } from './en/card.ts';
import { DRAWING_TEXTS } from './en/drawing.ts';
import { ENTRY_TEXTS } from './en/entry.ts';
import { FAULT_TEXTS } from './en/faults.ts';
import { INTERACTION_TEXTS } from './en/interaction-page.ts';
import { LEVEL_TEXTS, PAGE_TEXTS } from './en/page.ts';
import { PAPER_TEXTS } from './en/paper.ts';
import { REPORT_TEXTS } from './en/report.ts';
import { SHEET_TEXTS } from './en/sheet.ts';
import { TRUST_TEXTS } from './en/trust.ts';
import { fill } from './message.ts';
import type { UnitSystem } from './units.ts';

const TEXTS = {
  ...PAGE_TEXTS,
  ...CARD_TEXTS,
  ...DRAWING_TEXTS,
  ...INTERACTION_TEXTS,
  ...AROUND_TEXTS,
  ...PAPER_TEXTS,
  ...REPORT_TEXTS,
  ...SHEET_TEXTS,
  ...ENTRY_TEXTS,
  ...TRUST_TEXTS,
  ...FAULT_TEXTS,
} as const;
export type LabelKey = keyof typeof TEXTS;

/** A fixed text of pages, cards and drawings. */
export const label = (key: LabelKey, params: Readonly<Record<string, Param>> = {}, units: UnitSystem = 'metric'): string =>
  fill(TEXTS[key], params, units);

/** What the level of a notice asks of its reader. */
export const levelText = (level: Level): string => LEVEL_TEXTS[level];
