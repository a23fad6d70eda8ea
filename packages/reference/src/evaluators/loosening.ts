import {
  agedBreakawayShare,
  byCoefficients,
  degrees,
  evenBreakawayGrowth,
  freshLooseningShare,
  inKilonewton,
  inNewtonMetre,
  kN,
  looseningTorque,
  looseningWork,
  MPa,
  mm,
  Nm,
  onOffPreload,
  onOffUncertainty,
  shankTorqueAtYield,
  toolBreaksLoose,
  torqueForPreload,
  torqueSplit,
} from '@clampwright/core';
import { has, num } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { rowSource } from './row-source.ts';

const size = (inputs: Inputs) => ({
  diameter: mm(has(inputs, 'd_mm') ? num(inputs, 'd_mm') : num(inputs, 'd2_mm') + 0.649519 * num(inputs, 'P_mm')),
  pitch: mm(num(inputs, 'P_mm')),
});
const pair = (inputs: Inputs) => byCoefficients(num(inputs, 'mu_th'), num(inputs, 'mu_h'), mm(num(inputs, 'D_Km_mm')), rowSource);
const preload = (inputs: Inputs) => kN(num(inputs, 'F_kN'));
const atYield = (section: 'elastic' | 'plastic') => (inputs: Inputs) =>
  inNewtonMetre(shankTorqueAtYield(MPa(num(inputs, 'yield_MPa')), size(inputs), kN(num(inputs, 'axial_force_kN')), section));

export const loosenings: Evaluators = {
  tightening_torque_three_term: (inputs) => inNewtonMetre(torqueForPreload(pair(inputs), size(inputs), preload(inputs), 'linear')),
  fresh_loosening_torque_three_term: (inputs) =>
    inNewtonMetre(looseningTorque(pair(inputs), size(inputs), preload(inputs), 'linear').value),
  fresh_loosening_to_tightening_ratio_from_K: (inputs) => freshLooseningShare(size(inputs), num(inputs, 'nut_factor_K')),
  aged_breakaway_to_tightening_ratio: (inputs) =>
    agedBreakawayShare(
      size(inputs),
      num(inputs, 'nut_factor_K_at_assembly'),
      num(inputs, 'residual_preload_fraction'),
      num(inputs, 'friction_growth_factor'),
    ),
  friction_growth_at_which_breakaway_equals_tightening: (inputs) =>
    evenBreakawayGrowth(size(inputs), num(inputs, 'nut_factor_K_at_assembly'), num(inputs, 'residual_preload_fraction')),
  preload_from_on_off_torque_difference: (inputs) =>
    inKilonewton(
      onOffPreload(
        Nm(num(inputs, 'torque_to_move_tightening_Nm')),
        Nm(num(inputs, 'torque_to_move_loosening_Nm')),
        mm(num(inputs, 'P_mm')),
      ),
    ),
  relative_std_uncertainty_of_on_off_preload: (inputs) =>
    onOffUncertainty(
      Nm(num(inputs, 'torque_on_Nm')),
      Nm(num(inputs, 'torque_off_Nm')),
      num(inputs, 'relative_std_uncertainty_each_torque'),
    ),
  shank_torque_at_yield_elastic: atYield('elastic'),
  shank_torque_at_yield_plastic: atYield('plastic'),
  share_of_tightening_torque_that_stretches_bolt: (inputs) =>
    torqueSplit(
      byCoefficients(num(inputs, 'mu_both'), num(inputs, 'mu_both'), mm(num(inputs, 'D_Km_mm')), rowSource),
      size(inputs),
      'linear',
    ).lead,
  tool_can_break_loose: (inputs) =>
    toolBreaksLoose(
      Nm(num(inputs, 'tightening_torque_Nm')),
      num(inputs, 'assumed_breakaway_ratio'),
      Nm(num(inputs, 'tool_max_torque_Nm')),
      num(inputs, 'usable_fraction_of_max'),
    ),
  work_to_loosen_one_bolt: (inputs) =>
    looseningWork(
      Nm(num(inputs, 'breakaway_torque_Nm')),
      degrees(num(inputs, 'unload_angle_deg')),
      num(inputs, 'free_turns'),
      Nm(num(inputs, 'free_running_torque_Nm')),
    ),
};
