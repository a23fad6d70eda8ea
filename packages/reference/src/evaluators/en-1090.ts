import {
  ACTION_IF_DELAYED,
  ACTION_ON_REJECT,
  angleVerdict,
  byNutFactor,
  CONTROL_SHARE,
  combinedRotation,
  controlTorqueVerdict,
  countedPreload,
  degrees,
  type ExecutionClass,
  FIRST_STEP,
  feelerThickness,
  findGrade,
  findThread,
  fullCompressionAllowed,
  furtherTurningVerdict,
  hardenedWasherUnder,
  impactWrenchAllowed,
  inDegrees,
  inKilonewton,
  inNewtonMetre,
  inspectionIs,
  inspectionSample,
  K1_REFERENCE,
  type KClass,
  kClassAllowed,
  kClassStillValid,
  kN,
  kStatistics,
  leastFeelerRefusals,
  type Millimetre,
  MOST_RIGID,
  minimumPreload,
  minimumPreloadOf,
  mm,
  Nm,
  Nmm,
  packingAllowed,
  preloadForTorque,
  type Radian,
  reducedPreloadOf,
  reducedRotation,
  reducedRow,
  SECOND_STEP,
  SEQUENTIAL_LIMITS,
  STEP_BETWEEN_PLATES,
  sameTorqueForLots,
  secondStepMayStart,
  sequentialType,
  slackenedSet,
  slipResistance,
  splineVerdict,
  TIGHTENING_DIRECTION,
  torqueForPreload,
  torqueMargin,
  WRENCH_CHECK_INTERVAL,
  WRENCH_RULES,
  withinInspectionWindow,
} from '@clampwright/core';
import { flag, has, list, num, text } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { rowSource } from './row-source.ts';

/** F_p,C of a size and class, or of an area and strength given by the row. */
function preload(inputs: Inputs) {
  if (has(inputs, 'F_pC_kN')) return kN(num(inputs, 'F_pC_kN'));
  if (has(inputs, 'f_ub_MPa')) return minimumPreloadOf(num(inputs, 'f_ub_MPa'), num(inputs, 'As_mm2'));
  const thread = findThread(`M${num(inputs, 'd_mm')}`);
  const grade = findGrade(text(inputs, 'class'));
  if (!thread.ok || !grade.ok) throw new Error('size or class unknown');
  return minimumPreload({ thread: thread.value, grade: grade.value })!;
}

/** M_r = k·d·F_p,C, times a share. The pitch plays no part in it. */
const reference = (inputs: Inputs, k: number, share: number) =>
  inNewtonMetre(
    Nmm(share * torqueForPreload(byNutFactor(k, rowSource), { diameter: mm(num(inputs, 'd_mm')), pitch: mm(1) }, preload(inputs))),
  );
const byLot = (share: number) => (inputs: Inputs) => reference(inputs, num(inputs, 'k_m'), share);

const rotation = (table: (d: Millimetre, t: Millimetre) => Radian | undefined) => (inputs: Inputs) => {
  const angle = table(mm(num(inputs, 'd_mm')), mm(num(inputs, 'sum_t_mm')));
  return angle === undefined ? null : inDegrees(angle);
};

export const en1090PreloadTarget: Evaluators = { 'F_p,C': (inputs) => inKilonewton(preload(inputs)) };

export const preloadTargetDe: Evaluators = {
  'F_p,C*': (inputs) => deRow(inputs, (row) => inKilonewton(row.preload)),
  F_V_set_impact: (inputs) => deRow(inputs, (row) => (row.impact === null ? null : inKilonewton(row.impact))),
  '0.7*f_yb*As': (inputs) => inKilonewton(reducedPreloadOf(num(inputs, 'f_yb_MPa'), num(inputs, 'As_mm2'))),
  'F_p,C,red*': (inputs) => inKilonewton(countedPreload(kN(num(inputs, 'F_pC_star_kN')), flag(inputs, 'retightened'))),
};

function deRow(inputs: Inputs, of: (row: NonNullable<ReturnType<typeof reducedRow>>) => number | null): number | null {
  const row = reducedRow(mm(num(inputs, 'd_mm')));
  return row ? of(row) : null;
}

export const torqueDe: Evaluators = {
  M_A: (inputs) => deRow(inputs, ({ torque }) => (torque === null ? null : inNewtonMetre(torque))),
  M_pre: (inputs) =>
    deRow(inputs, (row) => {
      const torque = text(inputs, 'method') === 'combined' ? row.combined : row.turnOfNut;
      return torque === null ? null : inNewtonMetre(torque);
    }),
};

export const angleDe: Evaluators = { further_rotation: rotation(reducedRotation) };
export const inspectionDe: Evaluators = { verdict: (inputs) => furtherTurningVerdict(degrees(num(inputs, 'further_rotation_deg'))) };

export const torqueMethod: Evaluators = {
  '1.10*M_r,2': byLot(SECOND_STEP),
  '0.75*M_r,2': byLot(FIRST_STEP),
  '1/(1-1.65*V_k)': (inputs) => torqueMargin(num(inputs, 'V_k')),
};

export const combinedMethod: Evaluators = {
  '0.75*M_r,1': (inputs) => reference(inputs, num(inputs, 'k_default'), FIRST_STEP),
  further_rotation: rotation(combinedRotation),
};

export const kClass: Evaluators = {
  k_m: (inputs) => kStatistics(list(inputs, 'k_i')).mean,
  V_k: (inputs) => kStatistics(list(inputs, 'k_i')).variation,
  meets_K1: (inputs) => kStatistics(list(inputs, 'k_i')).meetsK1,
  meets_K2: (inputs) => kStatistics(list(inputs, 'k_i')).meetsK2,
  k_class_allowed: (inputs) =>
    kClassAllowed(text(inputs, 'method') as Parameters<typeof kClassAllowed>[0], text(inputs, 'k_class') as KClass),
};

export const slipEn: Evaluators = {
  'F_s,Rd,ser': (inputs) =>
    inKilonewton(slipResistance(preload(inputs), num(inputs, 'mu'), num(inputs, 'n'), num(inputs, 'k_s'), num(inputs, 'gamma_M3_ser'))),
};

export const assemblyRules: Readonly<Record<'sequence' | 'reuse' | 'fit-up' | 'washer-rule' | 'wrench', Evaluators>> = {
  sequence: {
    tightening_direction: () => TIGHTENING_DIRECTION,
    most_rigid_location: (inputs) => MOST_RIGID[text(inputs, 'joint') as keyof typeof MOST_RIGID] ?? null,
    start_second_step_allowed: (inputs) => secondStepMayStart(num(inputs, 'first_step_done'), num(inputs, 'group_size')),
    impact_wrench_allowed: (inputs) => impactWrenchAllowed(text(inputs, 'method') as 'torque', text(inputs, 'step') as 'first'),
    action_if_tightening_delayed: () => ACTION_IF_DELAYED,
    same_torque_for_mixed_lots: (inputs) => sameTorqueForLots(list(inputs, 'k_m')),
    k_class_still_valid: (inputs) => kClassStillValid(text(inputs, 'set') as 'exposed'),
  },
  reuse: {
    action: (inputs) => slackenedSet(flag(inputs, 'tightened_to_min_preload') && flag(inputs, 'later_slackened')),
  },
  'fit-up': {
    thickness_difference_ok: (inputs) => num(inputs, 'D_mm') <= STEP_BETWEEN_PLATES[flag(inputs, 'preloaded') ? 'preloaded' : 'general'],
    packing_ok: (inputs) => packingAllowed(mm(num(inputs, 'plate_thickness_mm')), num(inputs, 'number_of_plates')),
  },
  'washer-rule': {
    hardened_washer_under: (inputs) => hardenedWasherUnder(text(inputs, 'class'), text(inputs, 'turned_part') as 'nut'),
  },
  wrench: {
    max_deviation: (inputs) => 100 * WRENCH_RULES[text(inputs, 'use') as keyof typeof WRENCH_RULES].deviation,
    check_interval: (inputs) => WRENCH_CHECK_INTERVAL[text(inputs, 'situation') as keyof typeof WRENCH_CHECK_INTERVAL],
  },
};

export const inspectionEn: Evaluators = {
  '1.05*M_r,2': byLot(CONTROL_SHARE),
  verdict: (inputs) => {
    if (has(inputs, 'spline_sheared')) return splineVerdict(flag(inputs, 'spline_sheared'));
    if (has(inputs, 'angle_deviation_deg')) return angleVerdict(degrees(num(inputs, 'angle_deviation_deg')));
    return controlTorqueVerdict(degrees(num(inputs, 'rotation_at_control_torque_deg')));
  },
  within_window: (inputs) => withinInspectionWindow(num(inputs, 'hours_after_final_tightening')),
  tightening_inspection: (inputs) => inspectionIs(text(inputs, 'execution_class') as ExecutionClass),
  max_deviation: (inputs) => 100 * WRENCH_RULES[text(inputs, 'use') as keyof typeof WRENCH_RULES].deviation,
  full_compression_ok: (inputs) => fullCompressionAllowed(num(inputs, 'indicators_in_group'), num(inputs, 'fully_compressed')),
  min_feeler_refusals: (inputs) => leastFeelerRefusals(num(inputs, 'protrusions')),
  feeler_thickness: (inputs) => feelerThickness(text(inputs, 'indicator_under') as 'head', text(inputs, 'turned_part') as 'nut'),
  action_on_reject: (inputs) =>
    has(inputs, 'sequential_type')
      ? ACTION_ON_REJECT[text(inputs, 'sequential_type') as 'A']
      : ACTION_ON_REJECT[text(inputs, 'method') as 'torque'],
};

export const inspectionSampling: Evaluators = {
  n_min: (inputs) =>
    has(inputs, 'sequential_type')
      ? SEQUENTIAL_LIMITS[text(inputs, 'sequential_type') as 'A'].least
      : inspectionSample(
          text(inputs, 'execution_class') as ExecutionClass,
          text(inputs, 'method') as 'torque',
          text(inputs, 'step') as 'second',
          num(inputs, 'population'),
        ),
  n_max: (inputs) => SEQUENTIAL_LIMITS[text(inputs, 'sequential_type') as 'A'].most,
  sequential_type: (inputs) => sequentialType(text(inputs, 'execution_class') as ExecutionClass),
};

/** The two EN 1090-2 examples: M24 10.9 by torque (K2) and by the combined method (K1). */
export const en1090WorkedExamples: Evaluators = {
  'F_p,C': (inputs) => inKilonewton(preload(inputs)),
  'M_r,2': byLot(1),
  step1_torque: byLot(FIRST_STEP),
  step2_torque: byLot(SECOND_STEP),
  inspection_torque: byLot(CONTROL_SHARE),
  'F_at_step2_with_wrench_minus_4_percent_and_k=k_m': (inputs) =>
    inKilonewton(
      preloadForTorque(
        byNutFactor(num(inputs, 'k_m'), rowSource),
        { diameter: mm(num(inputs, 'd_mm')), pitch: mm(1) },
        Nm((1 - WRENCH_RULES['torque-method-any-step'].deviation) * byLot(SECOND_STEP)(inputs)),
      ),
    ),
  sum_t: (inputs) => clampThickness(inputs),
  '0.75*M_r,1': (inputs) => reference(inputs, K1_REFERENCE, FIRST_STEP),
  further_rotation: (inputs) => {
    const angle = combinedRotation(mm(num(inputs, 'd_mm')), mm(clampThickness(inputs)));
    return angle === undefined ? null : inDegrees(angle);
  },
};

/** Σt of the givens: all plates and all washers. */
const clampThickness = (inputs: Inputs): number =>
  list(inputs, 'plate_thicknesses_mm').reduce((sum, one) => sum + one, 0) + num(inputs, 'washers') * num(inputs, 'washer_thickness_mm');
