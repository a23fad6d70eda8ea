import type { Level, Param } from '@clampwright/core';
import { AROUND_TEXTS } from './en/around-page.ts';
import { PAGE_TEXTS } from './en/page.ts';
import { SHEET_TEXTS } from './en/sheet.ts';
import { TRUST_TEXTS } from './en/trust.ts';
import { fill } from './message.ts';
import { PRINTED_EN } from './printed/texts.ts';
import type { UnitSystem } from './units.ts';

const TEXTS = {
  ...PRINTED_EN,
  ...PAGE_TEXTS,
  ...AROUND_TEXTS,
  ...SHEET_TEXTS,
  ...TRUST_TEXTS,
} as const;
export type LabelKey = keyof typeof TEXTS;

/** A fixed text of pages, cards and drawings, in English. */
export const label = (key: LabelKey, params: Readonly<Record<string, Param>> = {}, units: UnitSystem = 'metric'): string =>
  fill(TEXTS[key], params, units);

/** What the level of a notice asks of its reader. */
export const levelText = (level: Level): string => label(`level.${level}`);
