import {
  type CivilDate,
  calibrationState,
  fractionalStep,
  inLbfFt,
  inNewtonMetre,
  kgfM,
  kN,
  lbfFt,
  mm,
  Nm,
  nearestSetting,
  preloadErrorFromNutFactor,
  preloadErrorFromUnit,
  SECOND_STEP,
  sameSerial,
  torqueAtStep,
  torqueCoefficient,
} from '@clampwright/core';
import { has, list, num, text } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

/** The gear a row describes, its steps numbered from one where it does not name them. */
const gear = (inputs: Inputs, key = 'chart_torque_Nm') => {
  const steps = has(inputs, 'chart_steps') ? list(inputs, 'chart_steps') : undefined;
  return list(inputs, key).map((torque, i) => ({ labels: [String(steps?.[i] ?? i + 1)], torque: Nm(torque) }));
};
const target = (inputs: Inputs) => Nm(num(inputs, 'target_Nm'));

/** Setting charts and calibration dates (practice, topic calibration). */
export const charts: Evaluators = {
  step_by_linear_interpolation: (inputs) => fractionalStep(gear(inputs), target(inputs)) ?? null,
  torque_at_fractional_step: (inputs) => {
    const torque = torqueAtStep(gear(inputs), num(inputs, 'step'));
    return torque === undefined ? null : inNewtonMetre(torque);
  },
  nearest_whole_step_error_percent: (inputs) => 100 * (nearestSetting(gear(inputs), target(inputs)).torque / target(inputs) - 1),
  target_outside_chart: (inputs) => fractionalStep(gear(inputs), target(inputs)) === undefined,
  calibration_state_on_day: (inputs) =>
    calibrationState({ due: text(inputs, 'due_date') as CivilDate }, text(inputs, 'work_date') as CivilDate),
  km_from_published_torque_table: (inputs) =>
    torqueCoefficient(Nm(num(inputs, 'torque_1p1_Mr_Nm') / SECOND_STEP), kN(num(inputs, 'F_kN')), mm(num(inputs, 'd_mm'))),
};

const TO_NMM = { 'N*m': Nm, 'ft*lbf': lbfFt, 'kgf*m': kgfM } as const;
type TorqueUnit = keyof typeof TO_NMM;

export const mixups: Evaluators = {
  torque_unit_conversion: (inputs) => {
    const torque = TO_NMM[text(inputs, 'from') as TorqueUnit](num(inputs, 'value'));
    return text(inputs, 'to') === 'ft*lbf' ? inLbfFt(torque) : inNewtonMetre(torque);
  },
  preload_error_from_unit_mixup: (inputs) =>
    100 * (/meant as ft/.test(text(inputs, 'mistake')) ? preloadErrorFromUnit('lbf·ft', 'N·m') : preloadErrorFromUnit('N·m', 'lbf·ft')),
  preload_error_from_lubricant_change: (inputs) => 100 * preloadErrorFromNutFactor(num(inputs, 'planned_K'), num(inputs, 'actual_K')),
  torque_if_gear_mis_set: (inputs) => {
    const torque = torqueAtStep(gear(inputs, `gear${num(inputs, 'actual_gear')}_chart`), num(inputs, 'step'));
    return torque === undefined ? null : inNewtonMetre(torque);
  },
  chart_matches_tool_serial: (inputs) => (sameSerial(text(inputs, 'chart_serial'), text(inputs, 'tool_serial')) ? 'accept' : 'refuse'),
};
