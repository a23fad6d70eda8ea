import {
  boltShearArea,
  boltThreadBending,
  breakingLoad,
  engagementH28,
  inKilonewton,
  MPa,
  mm,
  nutDilation,
  nutShearArea,
  nutThreadBending,
  requiredEngagement,
  requiredEngagementH28,
  shearStrength,
  strengthRatioH28,
  strippingLoads,
  threadStrengthRatio,
} from '@clampwright/core';
import { num } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

const size = (inputs: Inputs) => ({ diameter: mm(num(inputs, 'd_mm')), pitch: mm(num(inputs, 'P_mm')) });
const engagement = (inputs: Inputs) => ({
  pitch: mm(num(inputs, 'P_mm')),
  length: mm(num(inputs, 'm_eff_mm')),
  majorMin: mm(num(inputs, 'd_min_mm')),
  pitchDiameterMin: mm(num(inputs, 'd2_min_mm')),
  nutMinorMax: mm(num(inputs, 'D1_max_mm')),
  nutPitchDiameterMax: mm(num(inputs, 'D2_max_mm')),
});
const strengths = (inputs: Inputs) => ({
  bolt: shearStrength(MPa(num(inputs, 'Rm_bolt_MPa')), num(inputs, 'tau_ratio')),
  nut: shearStrength(MPa(num(inputs, 'Rm_nut_MPa')), num(inputs, 'tau_ratio')),
});
const loads = (inputs: Inputs) => strippingLoads(engagement(inputs), strengths(inputs), mm(num(inputs, 's_mm')), mm(num(inputs, 'd_mm')));

const lengthH28 = (inputs: Inputs) =>
  engagementH28({ ...size(inputs), nutMinorMax: mm(num(inputs, 'Kn_max_mm')), pitchDiameterMin: mm(num(inputs, 'Es_min_mm')) });
const ratioH28 = (inputs: Inputs) =>
  strengthRatioH28(
    {
      pitch: mm(num(inputs, 'P_mm')),
      majorMin: mm(num(inputs, 'Ds_min_mm')),
      pitchDiameterMin: mm(num(inputs, 'Es_min_mm')),
      nutMinorMax: mm(num(inputs, 'Kn_max_mm')),
      nutPitchDiameterMax: mm(num(inputs, 'En_max_mm')),
    },
    MPa(num(inputs, 'Rm_ext_MPa')),
    MPa(num(inputs, 'Rm_int_MPa')),
  );

export const threadStripping: Evaluators = {
  A_SGM: (inputs) => nutShearArea(engagement(inputs)),
  A_SGS: (inputs) => boltShearArea(engagement(inputs)),
  R_S: (inputs) => threadStrengthRatio(engagement(inputs), strengths(inputs)),
  C1_nut_dilation: (inputs) => nutDilation(mm(num(inputs, 's_mm')), mm(num(inputs, 'd_mm'))),
  C2: (inputs) => boltThreadBending(num(inputs, 'R_S')),
  C3: (inputs) => nutThreadBending(num(inputs, 'R_S')),
  F_strip_nut: (inputs) => inKilonewton(loads(inputs).stripNut),
  F_strip_bolt: (inputs) => inKilonewton(loads(inputs).stripBolt),
  F_break_bolt: (inputs) => inKilonewton(breakingLoad(MPa(num(inputs, 'Rm_bolt_MPa')), size(inputs))),
  m_eff_required: (inputs) =>
    requiredEngagement({
      ...size(inputs),
      majorMin: mm(num(inputs, 'd_min_mm')),
      nutPitchDiameterMax: mm(num(inputs, 'D2_max_mm')),
      tensileMax: MPa(num(inputs, 'Rm_bolt_max_MPa')),
      nutShear: MPa(num(inputs, 'tau_BM_MPa')),
      dilation: num(inputs, 'C1'),
      bending: num(inputs, 'C3'),
    }),
  'L_e_FED-STD-H28': lengthH28,
  'J_FED-STD-H28': ratioH28,
  'Q_FED-STD-H28': (inputs) => requiredEngagementH28(lengthH28(inputs), ratioH28(inputs)),
};
