import {
  clearThreadsAreEnough,
  type Hexagon,
  type HoleFit,
  hexagonFor,
  hrHexagon,
  hvClampRange,
  hvHexagon,
  iso273Hole,
  isoHexagon,
  isoThreadLength,
  isStructuralDiameter,
  metricThread,
  mm,
  protrusionIsEnough,
  type SteelworkHoleType,
  steelworkHole,
  type WasherStandard,
  washer,
} from '@clampwright/core';
import { has, num, text } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluator, Evaluators, Inputs } from '../row.ts';

const d = (inputs: Inputs) => mm(num(inputs, 'd_mm'));
const product = (inputs: Inputs) =>
  text(inputs, 'series').includes('14399-3') ? 'HR' : text(inputs, 'series').includes('14399-4') ? 'HV' : 'ISO';

function hexagon(inputs: Inputs): Hexagon | null {
  const thread = metricThread(d(inputs));
  return thread ? valueOrNull(hexagonFor(thread, product(inputs))) : null;
}

function bearingFace(inputs: Inputs) {
  if (product(inputs) !== 'ISO') return hexagon(inputs)?.bearingFace ?? null;
  const iso = isoHexagon(d(inputs));
  return (has(inputs, 'grade') && text(inputs, 'grade') === 'B' ? iso?.bearingFaceB : (iso?.bearingFaceA ?? iso?.bearingFaceB)) ?? null;
}

function threadLength(inputs: Inputs) {
  if (product(inputs) === 'HV') return hvHexagon(d(inputs))?.threadLength ?? null;
  if (has(inputs, 'l_mm')) return isoThreadLength(d(inputs), mm(num(inputs, 'l_mm')));
  return product(inputs) === 'HR' ? (hrHexagon(d(inputs))?.threadLength ?? null) : isoThreadLength(d(inputs), mm(0));
}

const acrossFlats: Evaluator = (inputs) => hexagon(inputs)?.acrossFlats ?? null;

export const hexagons: Evaluators = {
  s: acrossFlats,
  s_max: acrossFlats,
  k_nom: (inputs) => hexagon(inputs)?.headHeight ?? null,
  m_max: (inputs) => hexagon(inputs)?.nutHeight ?? null,
  dw_min: bearingFace,
  b_ref: threadLength,
};

const washerOf = (inputs: Inputs) =>
  valueOrNull(washer(text(inputs, 'series').replace(/^(EN|ISO)\s*/, '$1 ') as WasherStandard, d(inputs)));

export const washers: Evaluators = {
  inner_diameter_min: (inputs) => washerOf(inputs)?.inner ?? null,
  outer_diameter_max: (inputs) => washerOf(inputs)?.outer ?? null,
  h_nom: (inputs) => washerOf(inputs)?.thickness ?? null,
};

const steelwork = (inputs: Inputs) =>
  valueOrNull(steelworkHole(d(inputs), text(inputs, 'hole_type').replace('-', ' ') as SteelworkHoleType));

export const holes: Evaluators = {
  hole_diameter: (inputs) =>
    has(inputs, 'hole_type')
      ? (steelwork(inputs)?.width ?? null)
      : (valueOrNull(iso273Hole(d(inputs), text(inputs, 'series') as HoleFit))?.value ?? null),
  slot_length: (inputs) => steelwork(inputs)?.length ?? null,
};

const clamp = (inputs: Inputs) => valueOrNull(hvClampRange(d(inputs), mm(num(inputs, 'l_mm'))));

export const structuralGeometry: Evaluators = {
  protrusion_ok: (inputs) => protrusionIsEnough(mm(num(inputs, 'protrusion_mm')), mm(num(inputs, 'P_mm'))),
  free_threads_ok: (inputs) =>
    clearThreadsAreEnough(text(inputs, 'system') as 'HR' | 'HRC' | 'non-preloaded', num(inputs, 'full_threads_clear')),
  structural_diameter_ok: (inputs) => isStructuralDiameter(d(inputs)),
  clamp_length_min: (inputs) => clamp(inputs)?.min ?? null,
  clamp_length_max: (inputs) => clamp(inputs)?.max ?? null,
};
