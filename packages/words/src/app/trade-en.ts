import { ASSEMBLY_CHECKS, type AssemblyCheck, VALVE_CAUTIONS, type ValveCaution } from '@clampwright/core';
import { AROUND_TEXTS } from '../en/around-page.ts';
import { CAUTION_TEXTS } from '../en/caution.ts';
import { END_TEXTS, NO_SETTING_TEXTS, STEP_TEXTS } from '../en/plan.ts';
import { TOLD_TEXTS } from '../en/told.ts';
import type { TradeTexts } from './trade.ts';

export const TRADE_EN: TradeTexts = {
  step: STEP_TEXTS,
  end: END_TEXTS,
  noSetting: NO_SETTING_TEXTS,
  caution: CAUTION_TEXTS,
  check: Object.fromEntries(ASSEMBLY_CHECKS.map((check) => [check, TOLD_TEXTS[`checks.${check}`]])) as Record<AssemblyCheck, string>,
  rest: {
    'after a whole round': TOLD_TEXTS['work.safe-stop.after a whole round'],
    'after the first step, before marking': TOLD_TEXTS['work.safe-stop.after the first step, before marking'],
    'after all bolts are snug': TOLD_TEXTS['work.safe-stop.after all bolts are snug'],
  },
  valveCaution: Object.fromEntries(VALVE_CAUTIONS.map((code) => [code, AROUND_TEXTS[`valve.caution.${code}`]])) as Record<
    ValveCaution,
    string
  >,
};
