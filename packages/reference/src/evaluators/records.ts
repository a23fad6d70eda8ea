import {
  type CivilDate,
  firstRetightening,
  inDegrees,
  inKilonewton,
  leastGreatestForce,
  leastRotation,
  type SuitabilitySystem,
  sampleOf,
  startingTorqueVerdict,
  TOWER_TOP_LOSS,
  YEARLY_SAMPLE,
} from '@clampwright/core';
import { num, text } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

/** Samples, windows and verdicts of a record (practice, topic records). */
export const records: Evaluators = {
  assemblies_to_check: (inputs) => sampleOf(num(inputs, 'assemblies'), num(inputs, 'percent') / 100, num(inputs, 'minimum')),
  annual_sample_size: (inputs) => sampleOf(num(inputs, 'bolts'), num(inputs, 'percent') / 100 || YEARLY_SAMPLE.share),
  torque_check_result: (inputs) =>
    startingTorqueVerdict(num(inputs, 'torque_at_which_nut_started_to_turn_over_specified'), num(inputs, 'required_ratio')),
  first_retightening_window: (inputs) => {
    const found = firstRetightening(text(inputs, 'erection_date') as CivilDate, text(inputs, 'date_500_operating_hours') as CivilDate);
    return found === 'late' ? found : `${found.from}..${found.until}`;
  },
  axial_force_loss_after_500h_tower_top_flange: () => 100 * TOWER_TOP_LOSS,
};

const rotation = (which: 'first' | 'second') => (inputs: Inputs) =>
  inDegrees(leastRotation(text(inputs, 'system') as SuitabilitySystem, which, num(inputs, 'sum_t_over_d')));

/** Suitability for preloading (en-metric, topic suitability). */
export const suitability: Evaluators = {
  delta_theta_1_min: rotation('first'),
  delta_theta_2_min: rotation('second'),
  'F_bi,max_min': (inputs) => inKilonewton(leastGreatestForce(num(inputs, 'f_ub_MPa'), num(inputs, 'As_mm2'))),
};
