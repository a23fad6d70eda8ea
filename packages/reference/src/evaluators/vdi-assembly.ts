import {
  assemblyPreload,
  bearingDiameter,
  byCoefficients,
  inKilonewton,
  inNewtonMetre,
  kN,
  MPa,
  mm,
  torqueForPreload,
  type VdiEdition,
} from '@clampwright/core';
import { agrees } from '../compare.ts';
import { has, num, text } from '../inputs.ts';
import type { Evaluators, Inputs, Row } from '../row.ts';
import { rowSource } from './row-source.ts';

type Wedge = 'exact' | 'linear';
const size = (inputs: Inputs) => ({ diameter: mm(num(inputs, 'd_mm')), pitch: mm(num(inputs, 'P_mm')) });

function preload(inputs: Inputs, wedge: Wedge) {
  const edition: VdiEdition = has(inputs, 'edition') && text(inputs, 'edition') === '1986' ? '1986' : '2015';
  const input = {
    size: size(inputs),
    yieldStrength: MPa(num(inputs, 'Rp02min_MPa')),
    threadFriction: num(inputs, 'mu_th'),
    utilisation: num(inputs, 'nu'),
    edition,
    wedge,
  };
  const necked = has(inputs, 'shank') && text(inputs, 'shank').startsWith('necked');
  // the standard's necked shank is 0.9 of the root diameter; the row names that rule
  return assemblyPreload(necked ? { ...input, neck: mm(0.9 * (num(inputs, 'd_mm') - 1.226869 * num(inputs, 'P_mm'))) } : input);
}

const face = (inputs: Inputs) =>
  has(inputs, 'D_Km_mm') ? mm(num(inputs, 'D_Km_mm')) : bearingDiameter(mm(num(inputs, 'd_w_mm')), mm(num(inputs, 'd_h_mm')));

const force = (wedge: Wedge) => (inputs: Inputs) => inKilonewton(preload(inputs, wedge));
const torque = (wedge: Wedge) => (inputs: Inputs) =>
  inNewtonMetre(
    torqueForPreload(
      byCoefficients(num(inputs, 'mu_th'), num(inputs, 'mu_h'), face(inputs), rowSource),
      size(inputs),
      has(inputs, 'F_kN') ? kN(num(inputs, 'F_kN')) : preload(inputs, wedge),
      wedge,
    ),
  );

/** The README lets a printed table value agree with either form of the wedge. */
const either = (of: (wedge: Wedge) => (inputs: Inputs) => number) => (inputs: Inputs, row: Row) => {
  const exact = of('exact')(inputs);
  return agrees(exact, row) ? exact : of('linear')(inputs);
};

export const assemblyPreloads: Evaluators = {
  'F_M,Tab': either(force),
  'F_M,exact': force('exact'),
  'F_M,linear': force('linear'),
  'F_M,linear,neck': force('linear'),
  'F_M,Tab,1986': either(force),
  'F_M,Tab,stainless': either(force),
};

export const assemblyTorques: Evaluators = {
  'M_A,Tab': either(torque),
  'M_A,Tab,exact': torque('exact'),
  'M_A,Tab,linear': torque('linear'),
  'M_A,Tab,1986': either(torque),
  'M_A,Tab,stainless': either(torque),
};

/** vdi2230 rows of en-metric. */
export const vdi2230: Evaluators = { F_M_zul: either(force), M_A: either(torque) };
