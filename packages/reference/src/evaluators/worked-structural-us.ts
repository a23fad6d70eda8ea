import {
  arbitrationTorque,
  boltsToArbitrate,
  greatestTestTorque,
  inDegrees,
  inKip,
  inLbfFt,
  kip,
  lbf,
  lbfFt,
  nominalSlipResistance,
  nutRotation,
  passesRotationalCapacity,
  testRotation,
  torqueCoefficient,
  turnTestTension,
} from '@clampwright/core';
import { has, list, num } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { inchesOf } from './inch-fastener.ts';
import { pretension } from './structural-us.ts';

const torqueLimit = (inputs: Inputs) =>
  has(inputs, 'limit_ftlbf') ? lbfFt(num(inputs, 'limit_ftlbf')) : greatestTestTorque(lbf(num(inputs, 'P_lbf')), inchesOf(inputs));

export const structuralExamples: Evaluators = {
  'RCT.T_m': pretension,
  'RCT.F_turn_test': (inputs) => inKip(turnTestTension(kip(num(inputs, 'T_m_kip')))),
  'RCT.T_allow_at_40kip': (inputs) => inLbfFt(torqueLimit(inputs)),
  'RCT.K_of_test': (inputs) => torqueCoefficient(lbfFt(num(inputs, 'T_ftlbf')), lbf(num(inputs, 'P_lbf')), inchesOf(inputs)),
  'RCT.accept': (inputs) => passesRotationalCapacity({ torque: lbfFt(num(inputs, 'T_ftlbf')), torqueLimit: torqueLimit(inputs) }),
  'RCT.rotation_total_deg': (inputs) => {
    const turn = valueOrNull(nutRotation(inchesOf(inputs), inchesOf(inputs, 'L_in'), 0));
    return turn && inDegrees(testRotation(turn.value));
  },
  'slip.R_n_per_bolt': (inputs) => slipOf(inputs),
  'slip.R_n_A490_1in': (inputs) => slipOf(inputs),
  'arbitration.arbitration_torque': (inputs) => {
    const found = valueOrNull(arbitrationTorque(list(inputs, 'torques_ftlbf').map(lbfFt)));
    return found && inLbfFt(found);
  },
  'arbitration.bolts_to_test': (inputs) => boltsToArbitrate(num(inputs, 'bolts_in_connection')),
};
const slipOf = (inputs: Inputs) =>
  inKip(
    nominalSlipResistance({
      coefficient: num(inputs, 'mu'),
      pretension: kip(num(inputs, 'T_b_kip')),
      planes: num(inputs, 'n_s'),
      fillers: num(inputs, 'h_f'),
    }),
  );
