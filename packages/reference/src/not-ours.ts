import type { Row } from './row.ts';

/**
 * Quantities that are useful to read but that a bolting plan does not compute, with the reason. Counted apart, never as a gap.
 * A pattern is `topic/quantity`; `*` stands for any run of characters.
 */
const NOT_OURS: readonly (readonly [pattern: string, reason: string])[] = [
  ['battery/cell_resistance_10s_1C_half_charge', 'single-cell laboratory data, not a battery the crew holds'],
  ['battery/energy_fraction_vs_25C*', 'single-cell laboratory data'],
  ['battery/capacity_retention_after_cycles', 'single-cell laboratory data'],
  ['valve/MSS_SP91_*', 'what a person can pull: read, not computed'],
  ['valve/open_stem_force_from_torque_limit', 'actuator sizing'],
  ['reaction/dropped_object_*', 'work at height: a caution, not a computation'],
  ['reaction/fall_height_reaching_40_J', 'work at height: a caution, not a computation'],
  ['reaction/wind_up_energy_stored', 'needs the wind-up of one tool, which nobody measures on site'],
  ['reaction/slip_angle_limit_of_foot', 'a caution, not a computation'],
  ['loosening/fresh_nut_loosening_below_*', 'a reported observation, no formula'],
  ['*/loss_pct', 'a reported observation, no formula'],
  ['*/stretch_*_fraction', 'a reported observation, no formula'],
  ['*/restart_over_tightening', 'a reported observation, no formula'],
  ['friction/mu_static', 'bare laboratory surfaces, not bolts'],
  ['friction/mu_sliding', 'bare laboratory surfaces, not bolts'],
  ['friction/mu_range_*', 'bare laboratory surfaces, not bolts'],
  ['friction/static_to_sliding_ratio', 'bare laboratory surfaces, not bolts'],
  ['worked-example/T_raise_*', 'power screws'],
  ['worked-example/T_lower_*', 'power screws'],
  ['worked-example/T_collar*', 'power screws'],
  ['worked-example/T_thread_acme_cos', 'power screws'],
  ['worked-example/efficiency', 'power screws'],
  ['worked-example/alpha_n', 'power screws'],
  ['worked-example/k_frustum', 'stiffness by stepped frusta; the product uses the deformation cone'],
  ['worked-example/frustum_*', 'stiffness by stepped frusta; the product uses the deformation cone'],
  ['worked-example/k_series', 'stiffness by stepped frusta; the product uses the deformation cone'],
  ['worked-example/k_axial*', 'stiffness by stepped frusta; the product uses the deformation cone'],
  ['worked-example/Wileman_Ed_ratio', 'stiffness by stepped frusta; the product uses the deformation cone'],
  ['*/S_a_*', 'fatigue of the joint in service is the designer’s'],
  ['*/joint.S_a_*', 'fatigue of the joint in service is the designer’s'],
  ['*/n_f_goodman', 'fatigue of the joint in service is the designer’s'],
  ['*/joint.n_f_goodman', 'fatigue of the joint in service is the designer’s'],
  ['*/sens_M', 'identically one'],
  ['*/all_odd_to_even_steps_are_diametral', 'a property of one list, not a quantity'],
];

const matchers = NOT_OURS.map(([pattern, reason]) => ({
  test: new RegExp(`^${pattern.split('*').map(escapeRegExp).join('.*')}$`),
  reason,
}));

function escapeRegExp(text: string): string {
  return text.replace(/[.+?^${}()|[\]\\]/g, '\\$&');
}

export const isNotOurs = (row: Row): boolean => matchers.some(({ test }) => test.test(`${row.topic}/${row.quantity}`));
