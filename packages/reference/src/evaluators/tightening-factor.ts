import {
  byCoefficients,
  byNutFactor,
  inch,
  inKilonewton,
  inLbf,
  kN,
  lbfFt,
  leastPreload,
  mm,
  Nm,
  PRELOAD_UNCERTAINTIES,
  preloadBand,
  preloadForTorque,
  sampleDeviation,
  sampleMean,
  scatterOf,
  TIGHTENING_FACTORS,
  type TighteningMethod,
  tighteningFactorOf,
} from '@clampwright/core';
import { closest } from '../closest.ts';
import { list, num, text } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { rowSource } from './row-source.ts';

const METHODS = Object.keys(TIGHTENING_FACTORS) as TighteningMethod[];
function factor(inputs: Inputs) {
  const method = closest(METHODS, (name) => name, text(inputs, 'method'));
  return method && TIGHTENING_FACTORS[method];
}

export const tighteningFactors: Evaluators = {
  alpha_A_min: (inputs) => factor(inputs)?.low,
  alpha_A_max: (inputs) => factor(inputs)?.high,
  alpha_A: (inputs) => tighteningFactorOf(num(inputs, 'scatter_pm')),
  F_M_min: (inputs) => inKilonewton(leastPreload(kN(num(inputs, 'F_M_max_kN')), num(inputs, 'alpha_A'))),
};

/** T = K·F·d does not ask for the pitch. */
const nominal = (inputs: Inputs) =>
  preloadForTorque(
    byNutFactor(num(inputs, 'K'), rowSource),
    { diameter: inch(num(inputs, 'd_in')), pitch: mm(0) },
    lbfFt(num(inputs, 'T_inlbf') / 12),
  );
const band = (inputs: Inputs) => preloadBand(nominal(inputs), num(inputs, 'Gamma'));

export const tighteningScatter: Evaluators = {
  alpha_A_from_scatter: (inputs) => tighteningFactorOf(num(inputs, 'scatter_pct') / 100),
  scatter_from_alpha_A: (inputs) => scatterOf(num(inputs, 'alpha_A')) * 100,
  'F_M,min': (inputs) => inKilonewton(leastPreload(kN(num(inputs, 'F_M,max_kN')), num(inputs, 'alpha_A'))),
  preload_uncertainty_pct: (inputs) => {
    const entry = closest(
      PRELOAD_UNCERTAINTIES,
      ({ method, source }) => `${method} ${source.standard}${source.edition ?? ''}`,
      `${text(inputs, 'method')} ${text(inputs, 'table')}`,
    );
    return entry && entry.share * 100;
  },
  F_nominal_NASA5020: (inputs) => inLbf(nominal(inputs)),
  F_min_NASA5020: (inputs) => inLbf(band(inputs).least),
  F_max_NASA5020: (inputs) => inLbf(band(inputs).greatest),
  sample_mean: (inputs) => sampleMean(list(inputs, 'values_kN')),
  sample_standard_deviation: (inputs) => sampleDeviation(list(inputs, 'values_kN')),
  F_nominal: (inputs) =>
    inKilonewton(
      preloadForTorque(
        byCoefficients(num(inputs, 'mu_th_mean'), num(inputs, 'mu_h_mean'), mm(num(inputs, 'D_Km_mm')), rowSource),
        { diameter: mm(num(inputs, 'd_mm')), pitch: mm(num(inputs, 'P_mm')) },
        Nm(num(inputs, 'M_mean_Nm')),
        'short',
      ),
    ),
};
