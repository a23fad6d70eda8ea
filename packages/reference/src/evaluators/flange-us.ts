import {
  ALIGNMENT_LIMITS,
  b165Flange,
  b1647Flange,
  boltChord,
  byNutFactor,
  DISASSEMBLY,
  type FlangeRound,
  forceOn,
  GAP_CHECK_POINTS,
  inch,
  inch2,
  inInch,
  inInch2,
  inLbf,
  inLbfFt,
  ksi,
  lbf,
  lbfFt,
  mm,
  nominalRootArea,
  nominalStressArea,
  PIPING_ALIGNMENT,
  pcc1Torque,
  preloadForTorque,
  psi,
  RELAXATION_WAIT_HOURS,
  roundTorque,
  START_UP_RETORQUE,
  scaledTorque,
  snugShare,
  studElongation,
  torqueCoefficient,
  torqueForPreload,
  totalBoltArea,
} from '@clampwright/core';
import { flag, has, num, text } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { inchesOf, threadOf } from './inch-fastener.ts';
import { rowSource } from './row-source.ts';

const flange = (inputs: Inputs) =>
  valueOrNull((has(inputs, 'series') ? b1647Flange : b165Flange)(text(inputs, 'NPS'), num(inputs, 'flange_class')));
const dimension = (key: 'outsideDiameter' | 'thickness' | 'boltCircle' | 'boltDiameter' | 'studLength') => (inputs: Inputs) => {
  const found = flange(inputs);
  return found && inInch(found[key]);
};

export const asmeFlanges: Evaluators = {
  bolt_count: (inputs) => flange(inputs)?.bolts ?? null,
  flange_od: dimension('outsideDiameter'),
  bolt_dia: dimension('boltDiameter'),
  bolt_circle: dimension('boltCircle'),
  stud_length_rf: dimension('studLength'),
  thickness_min_excl_rf: dimension('thickness'),
};

export const chord = (inputs: Inputs) => inInch(boltChord(inchesOf(inputs, 'bolt_circle_in'), num(inputs, 'bolt_count')));

export const flangeDerived: Evaluators = {
  bolt_chord_spacing: chord,
  A_b_total: (inputs) => {
    const thread = threadOf(inputs);
    return thread && inInch2(totalBoltArea(num(inputs, 'bolt_count'), nominalRootArea(thread)));
  },
};

/** Bolt force: as given, or of the stress on the given root area. */
const force = (inputs: Inputs) =>
  has(inputs, 'F_lbf') ? lbf(num(inputs, 'F_lbf')) : forceOn(inch2(num(inputs, 'A_r_in2')), ksi(num(inputs, 'S_root_ksi')));
const size = (inputs: Inputs) => ({ diameter: inchesOf(inputs), pitch: mm(0) });
const friction = (inputs: Inputs) => byNutFactor(num(inputs, 'K'), rowSource);

export const nutFactorTorque: Evaluators = {
  T: (inputs) => inLbfFt(torqueForPreload(friction(inputs), size(inputs), force(inputs))),
  F: (inputs) => inLbf(preloadForTorque(friction(inputs), size(inputs), lbfFt(num(inputs, 'T_ftlbf')))),
};

export function tableTorque(inputs: Inputs) {
  const surface = flag(inputs, 'coated') ? 'coated' : 'non-coated';
  const found = valueOrNull(pcc1Torque(inchesOf(inputs), surface, ksi(num(inputs, 'S_root_ksi'))));
  return found && inLbfFt(found.value);
}

export const pcc1Table: Evaluators = {
  T_target: tableTorque,
  T_target_scaled: (inputs) => inLbfFt(scaledTorque(lbfFt(num(inputs, 'T50_ftlbf')), ksi(num(inputs, 'S_root_ksi')))),
  K_implied: (inputs) => torqueCoefficient(lbfFt(num(inputs, 'T_ftlbf')), force(inputs), inchesOf(inputs)),
};

export const elongations: Evaluators = {
  dL: (inputs) => {
    const thread = threadOf(inputs);
    return (
      thread &&
      inInch(
        studElongation({
          rootStress: ksi(num(inputs, 'S_root_ksi')),
          length: inch(num(inputs, 'L_eff_in')),
          modulus: psi(num(inputs, 'E_psi')),
          rootArea: nominalRootArea(thread),
          stressArea: nominalStressArea(thread),
        }),
      )
    );
  },
};

export function roundWindow(round: FlangeRound['round'], torqueFtLbf: number) {
  const { low, high } = roundTorque(round, lbfFt(torqueFtLbf));
  return [inLbfFt(low), inLbfFt(high)];
}

export const passSchedule: Evaluators = {
  snug_torque_max_pct_of_target: (inputs) => {
    const share = valueOrNull(snugShare(text(inputs, 'edition')));
    return share && share * 100;
  },
  torque_window: (inputs) => roundWindow(num(inputs, 'round') as FlangeRound['round'], num(inputs, 'T_target_ftlbf')),
  gap_check_locations_min: () => GAP_CHECK_POINTS,
  startup_retorque_flange_temp_window: () => START_UP_RETORQUE.fahrenheit,
  round5_wait_h: () => RELAXATION_WAIT_HOURS,
};

export const alignment: Evaluators = {
  centreline_offset_max: () => inInch(ALIGNMENT_LIMITS.centreline),
  two_hole_max: () => inInch(ALIGNMENT_LIMITS.boltHoles),
  parallelism_max: () => inInch(ALIGNMENT_LIMITS.parallelism),
  gap_max_in_gasket_thicknesses: () => ALIGNMENT_LIMITS.gapInGaskets,
  force_to_align_pct_of_bolt_load: () => ALIGNMENT_LIMITS.force * 100,
  single_bolt_alignment_max_pct: () => ALIGNMENT_LIMITS.singleBoltForce * 100,
  face_slope_max: () => PIPING_ALIGNMENT.faceSlope,
  threads_short_of_full_engagement_max: () => PIPING_ALIGNMENT.threadsShort,
};

export const disassembly: Evaluators = {
  OD_over: () => inInch(DISASSEMBLY.outsideDiameter),
  thickness_over: () => inInch(DISASSEMBLY.thickness),
  bolt_dia_at_or_over: () => inInch(DISASSEMBLY.boltDiameter),
  first_loosen_to_pct: () => DISASSEMBLY.firstShare * 100,
  second_loosen_to_pct: () => DISASSEMBLY.secondShare * 100,
};
