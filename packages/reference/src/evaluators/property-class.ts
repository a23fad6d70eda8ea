import { findGrade, type Grade, metricThread, mm, nutProofLoad, propertyClassLoad, strengthAt } from '@clampwright/core';
import { has, num, text } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluators, Inputs } from '../row.ts';

const grade = (inputs: Inputs, prefix = ''): Grade | null => valueOrNull(findGrade(`${prefix}${text(inputs, 'class')}`));

/** A diameter inside the range the row names; without one the values are the same at every diameter. */
const diameter = (inputs: Inputs) =>
  mm(has(inputs, 'd_mm') ? num(inputs, 'd_mm') : has(inputs, 'd_range_mm') && text(inputs, 'd_range_mm').startsWith('>') ? 20 : 10);

function strength(inputs: Inputs) {
  const found = grade(inputs);
  return found && valueOrNull(strengthAt(found, diameter(inputs)));
}

export const propertyClasses: Evaluators = {
  Rm_min: (inputs) => strength(inputs)?.tensile ?? null,
  Re_min: (inputs) => strength(inputs)?.yield ?? null,
  Sp: (inputs) => strength(inputs)?.proof ?? null,
  f_ub: (inputs) => grade(inputs)?.nominal?.tensile ?? null,
  f_yb: (inputs) => grade(inputs)?.nominal?.yield ?? null,
};

export const stainless: Evaluators = {
  Rm_min: (inputs) => strength(inputs)?.tensile ?? null,
  Rp02_min: (inputs) => strength(inputs)?.yield ?? null,
};

const load = (kind: 'proof' | 'tensile') => (inputs: Inputs) => {
  const found = grade(inputs, inputs.structural === true ? 'HR ' : '');
  const thread = metricThread(mm(num(inputs, 'd_mm')));
  return found && thread ? (valueOrNull(propertyClassLoad(found, thread, kind))?.value ?? null) : null;
};

export const metricProofLoads: Evaluators = { F_p_proof: load('proof') };
export const ultimateLoads: Evaluators = { F_m_min: load('tensile') };

export const nutProofLoads: Evaluators = {
  F_p_nut: (inputs) => {
    const thread = metricThread(mm(num(inputs, 'd_mm')));
    if (text(inputs, 'series').includes('14399-4')) return undefined;
    const standard = text(inputs, 'series').includes('14399-3') ? 'EN 14399-3' : 'ISO 898-2 style 1';
    return thread ? (valueOrNull(nutProofLoad(standard, String(inputs.nut_class), thread))?.value ?? null) : null;
  },
};
