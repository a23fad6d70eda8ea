import type { CautionCode, Cited, Datum, EndSignal, Source, StepPlan } from '@clampwright/core';
import { CAUTION_TEXTS } from './en/caution.ts';
import { END_TEXTS, NO_SETTING_TEXTS, PATTERN_TEXTS, STEP_TEXTS, TURNED_TEXTS, VERDICT_TEXTS } from './en/plan.ts';
import { fill } from './message.ts';
import type { UnitSystem } from './units.ts';

export const cautionText = (code: CautionCode): string => CAUTION_TEXTS[code];
export const verdictText = (verdict: keyof typeof VERDICT_TEXTS): string => VERDICT_TEXTS[verdict];
export const stepText = (name: keyof typeof STEP_TEXTS): string => STEP_TEXTS[name];
export const patternText = (pattern: keyof typeof PATTERN_TEXTS): string => PATTERN_TEXTS[pattern];
export const turnedText = (turned: keyof typeof TURNED_TEXTS): string => TURNED_TEXTS[turned];

/** How the crew knows the step is finished. */
export function endText(end: EndSignal, units: UnitSystem = 'metric'): string {
  const text = END_TEXTS[end.kind];
  if (end.kind === 'mark at angle') return fill(text, { angle: { dimension: 'angle', value: end.angle } }, units);
  if (end.kind === 'feeler refused') return fill(text, { thickness: { dimension: 'length', value: end.thickness } }, units);
  return text;
}

/** The setting as the tool shows it, or what stands in its place. */
export const settingLine = ({ setting, end }: StepPlan): string => setting?.text ?? NO_SETTING_TEXTS[end.kind];

const PROVENANCE: Readonly<Record<Source['provenance'], string>> = {
  published: '',
  computed: ' (computed)',
  memory: ' (from memory: confirm in the standard)',
  'common-practice': ' (common practice, no source)',
  certificate: ' (certificate)',
  engineer: ' (engineer)',
};

/** `EN 1090-2:2018, 8.5.3 (from memory: confirm in the standard)`. */
export const sourceText = ({ standard, edition, clause, provenance }: Source): string =>
  `${standard}${edition === undefined ? '' : `:${edition}`}${clause === undefined ? '' : `, ${clause}`}${standard === provenance ? '' : PROVENANCE[provenance]}`;

export const citedSource = ({ source }: Cited<unknown>): string => sourceText(source);

/** Where bolt 1 is, which way numbering runs and from where one looks. */
export const datumText = (datum: Datum | undefined): string =>
  datum
    ? `Bolt 1: ${datum.boltOne}. Numbers run ${datum.direction}, seen from ${datum.viewedFrom}.`
    : 'Datum not given: mark bolt 1 on the steel before the first pull.';
