import {
  calibrationDue,
  capability,
  expandedUncertainty,
  HAND_TOOL_LIMIT,
  type HandToolType,
  howeFactor,
  inDegrees,
  inNewtonMetre,
  isTestPoint,
  jointShift,
  lowerPreloadShare,
  Nm,
  oneSidedFactor,
  permissibleDeviation,
  relativeDeviation,
  resolutionUncertainty,
  sampleDeviation,
  sampleMean,
  shotsForProof,
  sixSigmaShare,
  TEST_JOINTS,
  TORQUE_METHOD_ACCURACY,
  toleranceInterval,
  twoSidedFactor,
  twoSigmaShare,
  withinLimit,
  yearsUntilLimit,
} from '@clampwright/core';
import { has, list, num, text } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

const readings = (inputs: Inputs) => list(inputs, 'readings_Nm');
const deviation = (inputs: Inputs) => relativeDeviation(Nm(num(inputs, 'set_or_indicated_Nm')), Nm(num(inputs, 'reference_Nm')));
const limit = (inputs: Inputs) => num(inputs, 'limit_percent') / 100;
const able = (inputs: Inputs) => capability(readings(inputs), num(inputs, 'target_Nm'), limit(inputs));
const interval = (inputs: Inputs) => toleranceInterval(readings(inputs), 0.95, 0.95, num(inputs, 'tolerance_factor'));
const shift = (inputs: Inputs) =>
  jointShift(
    { mean: num(inputs, 'mean_hard_Nm'), deviation: num(inputs, 's_hard_Nm') },
    { mean: num(inputs, 'mean_soft_Nm'), deviation: num(inputs, 's_soft_Nm') },
  );
const proof = (sides: 'one side' | 'both sides') => (inputs: Inputs) =>
  shotsForProof(num(inputs, 'coverage'), num(inputs, 'confidence'), sides);
const factor = (of: typeof twoSidedFactor) => (inputs: Inputs) => of(num(inputs, 'n'), num(inputs, 'coverage'), num(inputs, 'confidence'));

const deviations: Evaluators = {
  relative_deviation: (inputs) => 100 * deviation(inputs),
  within_limit: (inputs) => withinLimit(deviation(inputs), limit(inputs)),
};
const series: Evaluators = {
  sample_mean: (inputs) => sampleMean(readings(inputs)),
  sample_standard_deviation: (inputs) => sampleDeviation(readings(inputs)),
  six_s_percent_of_mean: (inputs) => 100 * sixSigmaShare(readings(inputs)),
};
const combined: Evaluators = {
  mean_shift_percent: (inputs) => (100 * shift(inputs).shift) / shift(inputs).mean,
  combined_scatter_percent: (inputs) => (100 * shift(inputs).scatter) / shift(inputs).mean,
};

/** Bench calibration and what few shots can prove (practice, topic calibration). */
export const calibrations: Evaluators = {
  ...deviations,
  ...series,
  ...combined,
  repeatability_percent_two_s: (inputs) => 100 * twoSigmaShare(readings(inputs)),
  Cm: (inputs) => able(inputs).potential,
  Cmk: (inputs) => able(inputs).actual,
  two_sided_normal_tolerance_factor: factor(twoSidedFactor),
  one_sided_normal_tolerance_factor: factor(oneSidedFactor),
  two_sided_tolerance_factor_Howe: factor(howeFactor),
  tolerance_interval_low_percent_of_target: (inputs) => 100 * (interval(inputs).low / num(inputs, 'target_Nm') - 1),
  tolerance_interval_high_percent_of_target: (inputs) => 100 * (interval(inputs).high / num(inputs, 'target_Nm') - 1),
  one_sided_distribution_free_sample_size: proof('one side'),
  two_sided_distribution_free_sample_size: proof('both sides'),
  expanded_uncertainty_k2_percent: (inputs) => expandedUncertainty(list(inputs, 'standard_uncertainties_percent')),
  standard_uncertainty_of_resolution: (inputs) => resolutionUncertainty(num(inputs, 'resolution_Nm')),
  lower_5_percent_preload_over_target: (inputs) =>
    lowerPreloadShare(num(inputs, 'torque_multiplier'), num(inputs, 'tool_cov'), num(inputs, 'k_factor_cov'), num(inputs, 'z')),
  years_until_limit_at_linear_drift: (inputs) =>
    yearsUntilLimit(
      num(inputs, 'error_then_percent') / 100,
      num(inputs, 'error_now_percent') / 100,
      num(inputs, 'years_between'),
      limit(inputs),
    ) ?? null,
  recalibration_trigger: (inputs) =>
    calibrationDue({ cycles: num(inputs, 'cycles_since_calibration'), overload: num(inputs, 'overload_percent_above_max') / 100 })
      ? 'recalibrate'
      : 'ok',
  hand_torque_tool_limit_clockwise: () => 100 * HAND_TOOL_LIMIT.clockwise,
  EN_1090_torque_method_tool_accuracy: () => 100 * TORQUE_METHOD_ACCURACY,
};

/** Hand torque tools by ISO 6789 (en-metric, topic torque-tool). */
export const torqueTools: Evaluators = {
  ...deviations,
  max_permissible_deviation: (inputs) =>
    100 * permissibleDeviation(text(inputs, 'type_class') as HandToolType, Nm(num(inputs, 'T_max_Nm'))),
  is_test_point: (inputs) => isTestPoint(num(inputs, 'percent_of_max') / 100),
  recalibration_due: (inputs) =>
    calibrationDue({
      cycles: num(inputs, 'cycles_since'),
      ...(has(inputs, 'months_since_first_use') ? { months: num(inputs, 'months_since_first_use') } : {}),
    }),
};

/** Rotary tools on hard and soft joints by ISO 5393 (en-metric, topic tool-capability). */
export const toolCapability: Evaluators = {
  ...series,
  angle_10_to_100_percent: (inputs) => inDegrees(TEST_JOINTS[text(inputs, 'joint') as 'hard' | 'soft']),
  combined_mean: (inputs) => inNewtonMetre(Nm(shift(inputs).mean)),
  combined_scatter: (inputs) => shift(inputs).scatter,
  combined_scatter_percent: combined.combined_scatter_percent!,
  mean_shift: (inputs) => shift(inputs).shift,
};
