import {
  axialStress,
  boltForce,
  byCoefficients,
  combinedStress,
  greatestAssemblyPreload,
  inKilonewton,
  kN,
  leastAssemblyPreload,
  mm,
  reserve,
  residualClampForce,
  shankTorsion,
  torsionalStress,
} from '@clampwright/core';
import { has, num } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { bearingPressures } from './bearing-pressure.ts';
import { resilience } from './resilience.ts';
import { rowSource } from './row-source.ts';
import { stressState } from './stress-state.ts';
import { torqueEquation } from './torque-equation.ts';
import { assemblyPreloads } from './vdi-assembly.ts';

const load = (inputs: Inputs) => ({
  ratio: num(inputs, 'Phi_n'),
  load: kN(num(inputs, 'F_A_kN')),
  embeddingLoss: kN(has(inputs, 'F_Z_kN') ? num(inputs, 'F_Z_kN') : 0),
});
const size = (inputs: Inputs) => ({ diameter: mm(num(inputs, 'd_mm')), pitch: mm(num(inputs, 'P_mm')) });

/** A VDI 2230 calculation step by step: what other topics ask, and what the working load adds. */
export const fullExamples: Evaluators = {
  ...resilience,
  ...assemblyPreloads,
  ...stressState,
  ...bearingPressures,
  ...torqueEquation,
  'F_M,min,required': (inputs) => inKilonewton(leastAssemblyPreload(kN(num(inputs, 'F_K_req_kN')), load(inputs))),
  'F_M,max,required': (inputs) => inKilonewton(greatestAssemblyPreload(num(inputs, 'alpha_A'), kN(num(inputs, 'F_M,min_kN')))),
  preload_capacity_ratio: (inputs) => reserve(num(inputs, 'F_M,Tab_kN'), num(inputs, 'F_M,max_kN')),
  'F_S,max': (inputs) =>
    inKilonewton(boltForce({ constant: num(inputs, 'Phi_n'), preload: kN(num(inputs, 'F_M_kN')), load: kN(num(inputs, 'F_A_kN')) })),
  sigma_red_service: (inputs) => {
    const torsion = shankTorsion(byCoefficients(num(inputs, 'mu_th'), 0, mm(0), rowSource), size(inputs), kN(num(inputs, 'F_M_kN')));
    return combinedStress(
      axialStress(kN(num(inputs, 'F_S_kN')), size(inputs)),
      torsionalStress(torsion.value, size(inputs), 'elastic'),
      num(inputs, 'k_tau'),
    );
  },
  S_F: (inputs) => reserve(num(inputs, 'Rp02min_MPa'), num(inputs, 'sigma_red_MPa')),
  S_p_bearing: (inputs) => reserve(num(inputs, 'p_G_MPa'), num(inputs, 'p_MPa')),
  'F_KR,min': (inputs) => inKilonewton(residualClampForce(kN(num(inputs, 'F_M,Tab_kN')), num(inputs, 'alpha_A'), load(inputs))),
};
