import {
  bearingFrictionFrom,
  byCoefficients,
  equalSplit,
  inDegrees,
  inNewtonMetre,
  kN,
  leadAngle,
  looseningTorque,
  mm,
  Nm,
  selfLockingFriction,
  threadFrictionFrom,
  torqueCoefficient,
  torqueForPreload,
  torqueSplit,
  totalFriction,
} from '@clampwright/core';
import { has, num } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { rowSource } from './row-source.ts';

const size = (inputs: Inputs) => ({ diameter: mm(num(inputs, 'd_mm')), pitch: mm(num(inputs, 'P_mm')) });
const pair = (inputs: Inputs) => byCoefficients(num(inputs, 'mu_th'), num(inputs, 'mu_h'), mm(num(inputs, 'D_Km_mm')), rowSource);
const preload = (inputs: Inputs) => kN(num(inputs, 'F_kN'));
const split = (inputs: Inputs) => torqueSplit(pair(inputs), size(inputs));

/** Torque ↔ preload by coefficients of friction (torque-preload). */
export const torqueEquation: Evaluators = {
  'M_A,exact': (inputs) => inNewtonMetre(torqueForPreload(pair(inputs), size(inputs), preload(inputs))),
  'M_A,short': (inputs) => inNewtonMetre(torqueForPreload(pair(inputs), size(inputs), preload(inputs), 'short')),
  'M_L,exact': (inputs) => inNewtonMetre(looseningTorque(pair(inputs), size(inputs), preload(inputs)).value),
  'M_L/M_A': (inputs) =>
    looseningTorque(pair(inputs), size(inputs), preload(inputs)).value / torqueForPreload(pair(inputs), size(inputs), preload(inputs)),
  share_lead: (inputs) => split(inputs).lead,
  share_thread_friction: (inputs) => split(inputs).threadFriction,
  share_head: (inputs) => split(inputs).bearingFriction,
  K_nut: (inputs) =>
    torqueCoefficient(torqueForPreload(pair(inputs), size(inputs), preload(inputs)), preload(inputs), mm(num(inputs, 'd_mm'))),
  'mu_th,selflock': (inputs) => selfLockingFriction(size(inputs)),
  lead_angle_deg: (inputs) => inDegrees(leadAngle(size(inputs))),
  mu_tot_from_K: (inputs) => equalSplit(num(inputs, 'K'), size(inputs), mm(num(inputs, 'D_Km_mm'))),
};

/** Friction from a test, ISO 16047 (en-metric). */
export const frictionFromTest: Evaluators = {
  K: (inputs) => torqueCoefficient(Nm(num(inputs, 'T_Nm')), preload(inputs), mm(num(inputs, 'd_mm'))),
  mu_tot: (inputs) =>
    totalFriction(Nm(num(inputs, 'T_Nm')), preload(inputs), size(inputs), mm((num(inputs, 'Do_mm') + num(inputs, 'dh_mm')) / 2)),
  mu_th: (inputs) => threadFrictionFrom(Nm(num(inputs, 'T_th_Nm')), preload(inputs), sizeFromPitchDiameter(inputs)),
  mu_b: (inputs) => bearingFrictionFrom(Nm(num(inputs, 'T_b_Nm')), preload(inputs), mm(num(inputs, 'Db_mm'))),
};

/** The row gives d₂ in place of d; the nominal diameter follows from it. */
const sizeFromPitchDiameter = (inputs: Inputs) => {
  const pitch = num(inputs, 'P_mm');
  return {
    pitch: mm(pitch),
    diameter: mm(num(inputs, has(inputs, 'd_mm') ? 'd_mm' : 'd2_mm') + (has(inputs, 'd_mm') ? 0 : 0.649519 * pitch)),
  };
};
