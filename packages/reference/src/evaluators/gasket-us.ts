import {
  assemblyGasketStress,
  assemblyTightness,
  basicSeatingWidth,
  effectiveSeatingWidth,
  type FacingColumn,
  type FacingSketch,
  gasketFactors,
  gasketReactionDiameter,
  gasketStressLimits,
  inch,
  inInch,
  inPsi,
  leastTightness,
  psi,
  tightnessConstants,
} from '@clampwright/core';
import { has, num, text } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluators, Inputs } from '../row.ts';

const factors = (inputs: Inputs) => valueOrNull(gasketFactors(text(inputs, 'gasket')));

export const gasketFactorRows: Evaluators = {
  m: (inputs) => factors(inputs)?.m ?? null,
  y: (inputs) => {
    const found = factors(inputs);
    return found && inPsi(found.y);
  },
  Gb_a_Gs: (inputs) => {
    const found = valueOrNull(tightnessConstants(text(inputs, 'gasket')));
    return found && [inPsi(found.loading), found.exponent, inPsi(found.unloading)];
  },
};

/** `sketch 2, col I`, `sketch 1a/1b flat`, `sketch 6` */
function basicWidth(inputs: Inputs, key: 'sketch' | 'facing') {
  const parts = /sketch (\d[a-d]?)(?:.*col (II?))?/.exec(text(inputs, key));
  if (!parts) return undefined;
  return basicSeatingWidth(parts[1] as FacingSketch, (parts[2] ?? 'I') as FacingColumn, {
    ...(has(inputs, 'N_in') ? { contact: inch(num(inputs, 'N_in')) } : {}),
    ...(has(inputs, 'w_in') ? { face: inch(num(inputs, 'w_in')) } : {}),
    ...(has(inputs, 'T_in') ? { thickness: inch(num(inputs, 'T_in')) } : {}),
  });
}

export const gasketLoadRows: Evaluators = {
  b_0: (inputs) => {
    const found = basicWidth(inputs, 'sketch');
    return found && inInch(found);
  },
  b: (inputs) => {
    const found = basicWidth(inputs, 'facing');
    return found && inInch(effectiveSeatingWidth(found));
  },
  G: (inputs) => inInch(gasketReactionDiameter(inch(num(inputs, 'gasket_od_in')), inch(num(inputs, 'gasket_id_in')))),
  T_pmin: (inputs) => leastTightness(psi(num(inputs, 'P_psi')), num(inputs, 'C')),
  T_pa: (inputs) => assemblyTightness(num(inputs, 'Tpmin')),
  S_ya: (inputs) =>
    inPsi(assemblyGasketStress({ loading: psi(num(inputs, 'Gb_psi')), exponent: num(inputs, 'a') }, num(inputs, 'Tpa'), num(inputs, 'e'))),
};

const limit = (key: 'seating' | 'operating' | 'greatest') => (inputs: Inputs) => {
  const found = valueOrNull(gasketStressLimits(text(inputs, 'gasket')))?.[key];
  return found === undefined ? null : inPsi(found);
};

export const gasketStressRows: Evaluators = {
  Sg_min_S: limit('seating'),
  Sg_seat_min: limit('seating'),
  Sg_min_O: limit('operating'),
  Sg_max: limit('greatest'),
};
