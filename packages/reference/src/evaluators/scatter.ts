import { inKilonewton, mm, normalMoments, propagate, type ScatterInput, worstCase } from '@clampwright/core';
import { num } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

const input = (inputs: Inputs): ScatterInput => {
  const mean = 1000 * num(inputs, 'M_mean_Nm');
  return {
    size: { diameter: mm(num(inputs, 'd_mm')), pitch: mm(num(inputs, 'P_mm')) },
    bearingDiameter: mm(num(inputs, 'D_Km_mm')),
    torque: { mean, deviation: mean * num(inputs, 'M_cv') },
    thread: { mean: num(inputs, 'mu_th_mean'), deviation: num(inputs, 'mu_th_sd') },
    bearing: { mean: num(inputs, 'mu_h_mean'), deviation: num(inputs, 'mu_h_sd') },
  };
};

/** Error propagation of one tightening (torque-preload, topic tightening-scatter). */
export const scatter: Evaluators = {
  F_nominal: (inputs) => inKilonewton(propagate(input(inputs)).nominal),
  sens_mu_th: (inputs) => propagate(input(inputs)).sensitivity.thread,
  sens_mu_h: (inputs) => propagate(input(inputs)).sensitivity.bearing,
  cv_first_order: (inputs) => propagate(input(inputs)).variation,
  mean_F_normal: (inputs) => inKilonewton(normalMoments(input(inputs)).mean),
  sd_F_normal: (inputs) => inKilonewton(normalMoments(input(inputs)).deviation),
  F_worst_low_2sigma: (inputs) => inKilonewton(worstCase(input(inputs), 2).low),
  F_worst_high_2sigma: (inputs) => inKilonewton(worstCase(input(inputs), 2).high),
};
