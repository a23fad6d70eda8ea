import {
  FLANGE_STUD_NUT_FACTORS,
  FRICTION_CLASSES,
  type FrictionClassId,
  flangeNutFactor,
  NUT_FACTORS,
  ROTATIONAL_CAPACITY_NUT_FACTOR,
  shortNutFactor,
} from '@clampwright/core';
import { closest } from '../closest.ts';
import { num, text } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

const frictionClass = (inputs: Inputs) => FRICTION_CLASSES[text(inputs, 'class') as FrictionClassId];

export const frictionTables: Evaluators = {
  mu_class_lower: (inputs) => frictionClass(inputs).lower,
  mu_class_upper: (inputs) => frictionClass(inputs).upper,
  K_typical: (inputs) =>
    closest(
      NUT_FACTORS,
      ({ condition, source }) => `${condition} ${source.standard} ${source.clause ?? ''}`,
      `${text(inputs, 'condition')} ${text(inputs, 'table')}`,
    )?.k,
  K_from_mu_JSME_short: (inputs) => shortNutFactor(num(inputs, 'mu')),
};

export const nutFactors: Evaluators = {
  'K_from_mu_PCC-1': (inputs) => flangeNutFactor(num(inputs, 'mu')),
  K_max: () => ROTATIONAL_CAPACITY_NUT_FACTOR,
  K_range: () => [FLANGE_STUD_NUT_FACTORS.lower, FLANGE_STUD_NUT_FACTORS.upper],
};
