import {
  axialStress,
  byCoefficients,
  combinedStress,
  inKilonewton,
  inNewtonMetre,
  kN,
  looseningTorque,
  MPa,
  mm,
  Nm,
  preloadForTorque,
  rootDiameter,
  rootYieldTorque,
  shankTorsion,
  torsionalStress,
  wringOffTorque,
  yieldUtilisation,
} from '@clampwright/core';
import { has, num } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { rowSource } from './row-source.ts';

const size = (inputs: Inputs) => ({ diameter: mm(num(inputs, 'd_mm')), pitch: mm(num(inputs, 'P_mm')) });
const force = (inputs: Inputs) => kN(num(inputs, 'F_kN'));
/** thread friction alone decides the torsion; the bearing face does not matter to it */
const torsion = (inputs: Inputs) =>
  shankTorsion(byCoefficients(num(inputs, 'mu_th'), 0, mm(0), rowSource), size(inputs), force(inputs)).value;
const actual = (inputs: Inputs) =>
  byCoefficients(num(inputs, 'mu_actual'), num(inputs, 'mu_actual'), mm(num(inputs, 'D_Km_mm')), rowSource);
const forceAtSetTorque = (inputs: Inputs) => preloadForTorque(actual(inputs), size(inputs), Nm(num(inputs, 'M_A_Nm')), 'short');
const root = (inputs: Inputs) =>
  has(inputs, 'd3min_mm') ? mm(num(inputs, 'd3min_mm')) : rootDiameter(size(inputs).diameter, size(inputs).pitch);
const wringOff = (inputs: Inputs) => wringOffTorque(MPa(num(inputs, 'Rm_min_MPa')), root(inputs), num(inputs, 'X_strength_ratio'));

export const stressState: Evaluators = {
  sigma_z: (inputs) => axialStress(force(inputs), size(inputs)),
  tau_plastic_section: (inputs) => torsionalStress(torsion(inputs), size(inputs), 'plastic'),
  tau_elastic_section: (inputs) => torsionalStress(torsion(inputs), size(inputs), 'elastic'),
  utilisation_assembly: (inputs) => yieldUtilisation(force(inputs), torsion(inputs), size(inputs), MPa(num(inputs, 'Rp02min_MPa'))),
  'sigma_red_service_ktau0.5': (inputs) =>
    combinedStress(axialStress(force(inputs), size(inputs)), torsionalStress(torsion(inputs), size(inputs), 'elastic'), 0.5),
  F_at_set_torque: (inputs) => inKilonewton(forceAtSetTorque(inputs)),
  utilisation_at_set_torque: (inputs) => {
    const preload = forceAtSetTorque(inputs);
    return yieldUtilisation(
      preload,
      shankTorsion(actual(inputs), size(inputs), preload).value,
      size(inputs),
      MPa(num(inputs, 'Rp02min_MPa')),
    );
  },
  'M_B,min(ISO 898-7)': (inputs) => inNewtonMetre(wringOff(inputs)),
  'M_T,break': (inputs) => inNewtonMetre(wringOff(inputs)),
  'M_T,break/M_A': (inputs) => wringOff(inputs) / Nm(num(inputs, 'M_A_Nm')),
  'M_T,yield_onset': (inputs) => inNewtonMetre(rootYieldTorque(MPa(num(inputs, 'Rp02min_MPa')), size(inputs), 'elastic')),
  'M_T,yield_full': (inputs) => inNewtonMetre(rootYieldTorque(MPa(num(inputs, 'Rp02min_MPa')), size(inputs), 'plastic')),
  'M_L,breakaway': (inputs) => {
    const standing = num(inputs, 'mu_sliding') * num(inputs, 'static_to_sliding');
    return inNewtonMetre(
      looseningTorque(byCoefficients(standing, standing, mm(num(inputs, 'D_Km_mm')), rowSource), size(inputs), force(inputs)).value,
    );
  },
};
