import {
  alternatingStress,
  boltForce,
  boltsForLoadFactor,
  inDegrees,
  inInch,
  inKip,
  inKsi,
  inLbf,
  inNewtonMetre,
  isoThreadLength,
  jointConstant,
  leadAngle,
  loadFactor,
  loadForClamp,
  MPa,
  memberStiffness,
  mm,
  type N,
  newtonPerMm,
  preloadFromProof,
  pressureLoadPerBolt,
  separationFactor,
  serviceStress,
  shankInGrip,
  stressOn,
  tappedGrip,
  tappedScrewLength,
  threadInGrip,
  yieldFactor,
} from '@clampwright/core';
import { has, num } from '../inputs.ts';
import type { Evaluators, Inputs, Row } from '../row.ts';
import { areaGiven, forceGiven, inMlbfPerInch, lengthGiven, modulusGiven, stiffnessGiven, stressGiven } from './given-unit.ts';
import { diameter, exponential, perInch, torqueOf, twoAreas } from './joint-given.ts';

const inRowStiffness = (value: number, { unit }: Row) => (unit === 'MN/m' ? value / 1000 : inMlbfPerInch(value));
const inRowForce = (value: ReturnType<typeof N>, { unit }: Row) =>
  unit === 'kN' ? value / 1000 : unit === 'kip' ? inKip(value) : inLbf(value);
const inRowStress = (value: ReturnType<typeof MPa>, { unit }: Row) => (unit === 'MPa' ? value : inKsi(value));
const inRowLength = (value: ReturnType<typeof mm>, { unit }: Row) => (unit === 'mm' ? value : inInch(value));
const ratioConstant = (inputs: Inputs) => jointConstant(newtonPerMm(num(inputs, 'kb_over_kc')), newtonPerMm(1));
const underLoad = (inputs: Inputs) => ({
  constant: num(inputs, 'C'),
  preload: forceGiven(inputs, 'F_i'),
  load: forceGiven(inputs, has(inputs, 'P_total_kip') ? 'P_total' : 'P'),
});

/** Textbook joints, one step a row (torque-preload). */
export const jointSteps: Evaluators = {
  stress_F_over_A: (inputs, row) => inRowStress(stressOn(forceGiven(inputs, 'F'), areaGiven(inputs, 'A')), row),
  joint_constant_C: (inputs) => jointConstant(stiffnessGiven(inputs, 'k_b'), stiffnessGiven(inputs, 'k_m')),
  bolt_stress_service: (inputs, row) =>
    inRowStress(serviceStress(stressGiven(inputs, 'sigma_i'), num(inputs, 'C'), forceGiven(inputs, 'P'), areaGiven(inputs, 'A_t')), row),
  T_KFd: (inputs, { unit }) => {
    const torque = torqueOf(inputs, forceGiven(inputs, 'F'));
    return unit === 'N*m' ? inNewtonMetre(torque) : inLbf(perInch(torque));
  },
  lead_angle_from_dm: (inputs) => {
    const pitch = lengthGiven(inputs, 'lead');
    return inDegrees(leadAngle({ pitch, diameter: mm(lengthGiven(inputs, 'd_m') + ((3 * Math.sqrt(3)) / 8) * pitch) }));
  },
  'k_m_Shigley_8-22': (inputs, row) =>
    inRowStiffness(memberStiffness(modulusGiven(inputs), diameter(inputs), lengthGiven(inputs, 'l')), row),
  k_m_Wileman: (inputs, row) => inRowStiffness(exponential(inputs), row),
  k_b_two_areas: (inputs, row) => inRowStiffness(twoAreas(inputs), row),
  P_per_bolt_pressure: (inputs, row) =>
    inRowForce(pressureLoadPerBolt(MPa(num(inputs, 'p_MPa')), lengthGiven(inputs, 'D'), num(inputs, 'n')), row),
  L_T_metric: (inputs) => isoThreadLength(diameter(inputs), mm(0)),
  F_i_preload: (inputs, row) =>
    inRowForce(preloadFromProof(num(inputs, 'fraction'), areaGiven(inputs, 'A_t'), stressGiven(inputs, 'S_p')), row),
  n_L: (inputs) => loadFactor(underLoad(inputs), stressGiven(inputs, 'S_p'), areaGiven(inputs, 'A_t')),
  n_p: (inputs) => yieldFactor(underLoad(inputs), stressGiven(inputs, 'S_p'), areaGiven(inputs, 'A_t')),
  n_0: (inputs) => separationFactor(underLoad(inputs)),
  bolt_count_real: (inputs) =>
    boltsForLoadFactor(underLoad(inputs), num(inputs, 'n_L'), stressGiven(inputs, 'S_p'), areaGiven(inputs, 'A_t')),
  grip_tapped: (inputs, row) => inRowLength(tappedGrip(lengthGiven(inputs, 'h'), diameter(inputs), lengthGiven(inputs, 't2')), row),
  L_min_tapped: (inputs, row) => inRowLength(tappedScrewLength(lengthGiven(inputs, 'h'), diameter(inputs)), row),
  l_d: (inputs, row) => inRowLength(shankInGrip(lengthGiven(inputs, 'L'), lengthGiven(inputs, 'L_T')), row),
  l_t: (inputs, row) => inRowLength(threadInGrip(lengthGiven(inputs, 'l'), lengthGiven(inputs, 'l_d')), row),
  sigma_a_alternating: (inputs, row) =>
    inRowStress(alternatingStress(num(inputs, 'C'), forceGiven(inputs, 'P'), areaGiven(inputs, 'A_t')), row),
  P_for_residual_clamp: (inputs, row) =>
    inRowForce(loadForClamp(ratioConstant(inputs), forceGiven(inputs, 'F_i'), forceGiven(inputs, 'F_c')), row),
  bolt_force_at_P: (inputs, row) =>
    inRowForce(boltForce({ constant: ratioConstant(inputs), preload: forceGiven(inputs, 'F_i'), load: forceGiven(inputs, 'P') }), row),
};
