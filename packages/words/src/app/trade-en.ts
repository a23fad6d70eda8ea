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
  inspection: {
    'control torque': TOLD_TEXTS['inspection.method.control torque'],
    'angle marks': TOLD_TEXTS['inspection.method.angle marks'],
    spline: TOLD_TEXTS['inspection.method.spline'],
    feeler: TOLD_TEXTS['inspection.method.feeler'],
    'pre-installation and routine observed': TOLD_TEXTS['inspection.method.pre-installation and routine observed'],
    'circular re-check': TOLD_TEXTS['inspection.method.circular re-check'],
  },
  provenance: {
    computed: TOLD_TEXTS['source.computed'],
    memory: TOLD_TEXTS['source.memory'],
    'common-practice': TOLD_TEXTS['source.common-practice'],
    certificate: TOLD_TEXTS['source.certificate'],
    engineer: TOLD_TEXTS['source.engineer'],
  },
  role: {
    crew: 'crew',
    inspector: 'inspector',
    planner: 'planner',
    client: 'client',
  },
  scale: {
    gear: 'gear',
    step: 'step',
    'pump pressure': 'pump pressure',
    'air pressure': 'air pressure',
    scale: 'scale',
  },
};
