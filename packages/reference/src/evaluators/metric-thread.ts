import { bearingDiameter, metricThread, mm, pitchDiameter, rootDiameter, stressArea } from '@clampwright/core';
import { num } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

const d = (inputs: Inputs) => mm(num(inputs, 'd_mm'));
const p = (inputs: Inputs) => mm(num(inputs, 'P_mm'));

export const metricThreads: Evaluators = {
  P: (inputs) => metricThread(d(inputs))?.pitch ?? null,
  d2: (inputs) => pitchDiameter(d(inputs), p(inputs)),
  d3: (inputs) => rootDiameter(d(inputs), p(inputs)),
  As: (inputs) => stressArea(d(inputs), p(inputs)),
  As_nom: (inputs) => metricThread(d(inputs))?.printedStressArea ?? null,
  has_coarse_pitch: (inputs) => metricThread(d(inputs)) !== undefined,
};

export const headGeometry: Evaluators = {
  D_Km: (inputs) => bearingDiameter(mm(num(inputs, 'd_w_mm')), mm(num(inputs, 'd_h_mm'))),
  A_S: (inputs) => stressArea(d(inputs), p(inputs)),
};
