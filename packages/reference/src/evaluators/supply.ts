import {
  batteriesNeeded,
  boltBounds,
  boltsPerCharge,
  canFinish,
  chanceItLasts,
  chargeMinutes,
  degrees,
  drawBetweenDrops,
  drawLine,
  drawPerBolt,
  inch,
  inDegrees,
  inLbf,
  inNewtonMetre,
  jointEnergy,
  lbf,
  learnt,
  MPa,
  mm,
  N,
  Nm,
  nextChargeBound,
  overallEfficiency,
  psi,
  ratedEnergy,
  resistanceRatio,
  rimForce,
  socketCurrent,
  socketPower,
  stemFactor,
  stemLeadAngle,
  stemStress,
  stemThrust,
  stemTorque,
  strokeWork,
  TEMPERATURES,
  tighteningWork,
  transferablePower,
  turnsOfStroke,
  voltageSag,
  waterworksTurns,
} from '@clampwright/core';
import { list, num } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluators, Inputs } from '../row.ts';

const WATT_HOUR = 3600;
const MILLIOHM = 0.001;
const bounds = (inputs: Inputs) =>
  boltBounds(
    num(inputs, 'usable_full_pack_J'),
    num(inputs, 'bars_lit_of_4'),
    num(inputs, 'draw_per_bolt_low_J'),
    num(inputs, 'draw_per_bolt_high_J'),
  );
const after = (inputs: Inputs) =>
  learnt(
    { mean: num(inputs, 'prior_mean_J'), deviation: num(inputs, 'prior_sd_J') },
    list(inputs, 'observed_draw_J'),
    num(inputs, 'observation_sd_J'),
  );
const ofLine = (inputs: Inputs, what: 'slope' | 'intercept') =>
  valueOrNull(drawLine(list(inputs, 'work_J'), list(inputs, 'draw_J')))?.[what] ?? null;
const bothSteps = (inputs: Inputs) =>
  jointEnergy([1, 2].map((step) => ({ bolts: num(inputs, 'bolts'), draw: num(inputs, `draw_step${step}_J`) })));

/** Batteries (practice, topic battery). */
export const batteries: Evaluators = {
  pack_energy: (inputs) => ratedEnergy(num(inputs, 'nominal_V'), num(inputs, 'capacity_Ah')),
  mechanical_work_per_bolt: (inputs) =>
    tighteningWork({
      from: Nm(0),
      to: Nm(num(inputs, 'final_torque_Nm')),
      ramp: degrees(num(inputs, 'ramp_deg')),
      freeTurns: num(inputs, 'free_turns'),
      running: Nm(num(inputs, 'free_running_torque_Nm')),
    }),
  mechanical_work_ramp_between_torques: (inputs) =>
    tighteningWork({
      from: Nm(num(inputs, 'start_torque_Nm')),
      to: Nm(num(inputs, 'end_torque_Nm')),
      ramp: degrees(num(inputs, 'angle_deg')),
      freeTurns: 0,
      running: Nm(0),
    }),
  overall_efficiency: (inputs) => overallEfficiency(list(inputs, 'stage_efficiencies')),
  whole_bolts_per_charge: (inputs) =>
    boltsPerCharge(
      num(inputs, 'pack_Wh') *
        WATT_HOUR *
        num(inputs, 'usable_fraction') *
        num(inputs, 'temperature_factor') *
        num(inputs, 'ageing_factor'),
      drawPerBolt(num(inputs, 'work_per_bolt_J'), {
        efficiency: num(inputs, 'overall_efficiency'),
        overhead: num(inputs, 'overhead_J_per_bolt'),
      }),
    ),
  voltage_sag: (inputs) =>
    voltageSag(num(inputs, 'cell_resistance_mOhm') * MILLIOHM, num(inputs, 'series'), num(inputs, 'parallel'), num(inputs, 'current_A')),
  resistance_ratio_vs_25C: (inputs) => resistanceRatio(num(inputs, 'cell_temperature_C')),
  maximum_transferable_power: (inputs) =>
    transferablePower(
      num(inputs, 'open_circuit_V'),
      (num(inputs, 'cell_resistance_mOhm') * MILLIOHM * num(inputs, 'series')) / num(inputs, 'parallel'),
      0,
    ),
  vehicle_socket_power_limit: (inputs) => socketPower(num(inputs, 'fuse_A'), num(inputs, 'system_V'), num(inputs, 'continuous_fraction')),
  socket_current_while_charging_through_inverter: (inputs) =>
    socketCurrent({
      chargeCurrent: num(inputs, 'charge_current_A'),
      batteryVolts: num(inputs, 'pack_V'),
      chargerEfficiency: num(inputs, 'charger_efficiency'),
      inverterEfficiency: num(inputs, 'inverter_efficiency'),
      vehicleVolts: num(inputs, 'vehicle_V'),
    }),
  charge_time_minutes: (inputs) =>
    chargeMinutes(num(inputs, 'pack_Wh'), num(inputs, 'charge_power_to_pack_W'), num(inputs, 'taper_extra_min')),
  guaranteed_bolts_remaining: (inputs) => valueOrNull(bounds(inputs))?.guaranteed ?? null,
  best_case_bolts_remaining: (inputs) => valueOrNull(bounds(inputs))?.best ?? null,
  draw_per_bolt_from_bolts_between_bar_changes: (inputs) =>
    drawBetweenDrops(num(inputs, 'usable_full_pack_J'), num(inputs, 'bolts_between_two_bar_changes')),
  posterior_mean_draw_per_bolt: (inputs) => after(inputs).mean,
  posterior_sd_of_mean_draw: (inputs) => after(inputs).deviation,
  probability_battery_lasts: (inputs) =>
    chanceItLasts(num(inputs, 'energy_left_J'), num(inputs, 'bolts_to_do'), {
      mean: num(inputs, 'mean_draw_J'),
      meanDeviation: num(inputs, 'sd_of_mean_J'),
      boltDeviation: num(inputs, 'bolt_to_bolt_sd_J'),
    }),
  lower_prediction_bound_next_charge: (inputs) =>
    valueOrNull(nextChargeBound(list(inputs, 'bolts_per_charge_log'), num(inputs, 'confidence'))),
  draw_vs_work_slope: (inputs) => ofLine(inputs, 'slope'),
  draw_vs_work_intercept: (inputs) => ofLine(inputs, 'intercept'),
  packs_needed_for_both_steps: (inputs) => batteriesNeeded(bothSteps(inputs), num(inputs, 'usable_pack_J')),
  can_finish_joint_on_present_charge: (inputs) => canFinish(bothSteps(inputs), num(inputs, 'energy_left_J')),
  charge_temperature_minimum: () => TEMPERATURES.charge.low,
  charge_temperature_maximum: () => TEMPERATURES.charge.high,
  discharge_temperature_minimum: () => TEMPERATURES.work.low,
  discharge_temperature_maximum: () => TEMPERATURES.work.high,
};

const loadUs = (inputs: Inputs) => ({
  seat: inch(num(inputs, 'seat_diameter_in')),
  stem: inch(num(inputs, 'stem_diameter_in')),
  differential: psi(num(inputs, 'differential_pressure_psi')),
  line: psi(num(inputs, 'line_pressure_psi')),
  valveFactor: num(inputs, 'valve_factor'),
  packing: lbf(num(inputs, 'packing_load_lbf')),
});
const loadSi = (inputs: Inputs) => ({
  seat: mm(num(inputs, 'seat_diameter_mm')),
  stem: mm(num(inputs, 'stem_diameter_mm')),
  differential: MPa(num(inputs, 'differential_pressure_MPa')),
  line: MPa(num(inputs, 'line_pressure_MPa')),
  valveFactor: num(inputs, 'valve_factor'),
  packing: N(num(inputs, 'packing_load_N')),
});
const acme = (inputs: Inputs) => ({
  outside: inch(num(inputs, 'stem_outside_diameter_in')),
  pitch: inch(1 / num(inputs, 'threads_per_inch')),
  starts: num(inputs, 'starts'),
  halfAngle: degrees(num(inputs, 'thread_half_angle_deg')),
});
const trapezoidal = (inputs: Inputs, outside: string) => ({
  outside: mm(num(inputs, outside)),
  pitch: mm(num(inputs, 'P_mm')),
  starts: num(inputs, 'starts'),
  halfAngle: degrees(15),
});
const FOOT = inch(12);
const METRE = 1000;

/** Gate valves (practice, topic valve). */
export const valves: Evaluators = {
  closing_thrust: (inputs) => inLbf(stemThrust(loadUs(inputs), 'closing')),
  opening_thrust: (inputs) => inLbf(stemThrust(loadUs(inputs), 'opening')),
  closing_thrust_SI: (inputs) => stemThrust(loadSi(inputs), 'closing'),
  stem_factor: (inputs) => stemFactor(acme(inputs), num(inputs, 'stem_friction')) / FOOT,
  lead_angle_deg: (inputs) => inDegrees(stemLeadAngle(acme(inputs)) as never),
  stem_factor_trapezoidal_m: (inputs) => stemFactor(trapezoidal(inputs, 'stem_d_mm'), num(inputs, 'stem_friction')) / METRE,
  stem_torque: (inputs) => stemTorque(lbf(num(inputs, 'thrust_lbf')), mm(num(inputs, 'stem_factor_ft') * FOOT)) / (lbf(1) * FOOT),
  worked_DN150_closing_torque: (inputs) =>
    inNewtonMetre(
      stemTorque(stemThrust(loadSi(inputs), 'closing'), stemFactor(trapezoidal(inputs, 'stem_diameter_mm'), num(inputs, 'stem_friction'))),
    ),
  turns_from_stroke_and_lead: (inputs) => turnsOfStroke(mm(num(inputs, 'stroke_mm')), num(inputs, 'lead_mm')),
  turns_rule_lower: (inputs) => waterworksTurns(num(inputs, 'nominal_size_in')).low,
  turns_rule_published_example: (inputs) => waterworksTurns(num(inputs, 'nominal_size_in')).high,
  rim_force_two_hands_total: (inputs) => rimForce(Nm(num(inputs, 'torque_Nm')), mm(METRE * num(inputs, 'handwheel_diameter_m'))),
  stem_torsional_stress: (inputs) => stemStress(Nm(num(inputs, 'torque_Nm')), mm(num(inputs, 'stem_root_diameter_mm'))),
  valve_stroke_work: (inputs) =>
    strokeWork({
      running: Nm(num(inputs, 'running_torque_Nm')),
      turns: num(inputs, 'turns'),
      seating: Nm(num(inputs, 'extra_seating_torque_Nm')),
      seatingTurns: num(inputs, 'seating_turns'),
    }),
};
