import { inch, inch2, kip, kN, ksi, lbf, type Millimetre, MPa, mm, mm2, N, type Newton, newtonPerMm, psi } from '@clampwright/core';
import { has, num } from '../inputs.ts';
import type { Inputs } from '../row.ts';

/** A given in whichever unit the row states it; the key without its unit. */
export const lengthGiven = (inputs: Inputs, key: string): Millimetre =>
  has(inputs, `${key}_in`) ? inch(num(inputs, `${key}_in`)) : mm(num(inputs, `${key}_mm`));

export const areaGiven = (inputs: Inputs, key: string) =>
  has(inputs, `${key}_in2`) ? inch2(num(inputs, `${key}_in2`)) : mm2(num(inputs, `${key}_mm2`));

export function forceGiven(inputs: Inputs, key: string): Newton {
  if (has(inputs, `${key}_kip`)) return kip(num(inputs, `${key}_kip`));
  if (has(inputs, `${key}_lbf`)) return lbf(num(inputs, `${key}_lbf`));
  return has(inputs, `${key}_kN`) ? kN(num(inputs, `${key}_kN`)) : N(num(inputs, `${key}_N`));
}

export function stressGiven(inputs: Inputs, key: string) {
  if (has(inputs, `${key}_ksi`)) return ksi(num(inputs, `${key}_ksi`));
  if (has(inputs, `${key}_kN_per_mm2`)) return MPa(1000 * num(inputs, `${key}_kN_per_mm2`));
  return MPa(num(inputs, `${key}_MPa`));
}

export const modulusGiven = (inputs: Inputs, key = 'E') =>
  has(inputs, `${key}_Mpsi`) ? psi(1e6 * num(inputs, `${key}_Mpsi`)) : MPa(1000 * num(inputs, `${key}_GPa`));

/** lbf/in in N/mm */
const PER_INCH = lbf(1) / inch(1);
export const stiffnessFromMlbfPerInch = (value: number) => newtonPerMm(value * 1e6 * PER_INCH);
export const inMlbfPerInch = (value: number) => value / (1e6 * PER_INCH);
export const stiffnessGiven = (inputs: Inputs, key: string) =>
  has(inputs, `${key}_Mlbf_per_in`)
    ? stiffnessFromMlbfPerInch(num(inputs, `${key}_Mlbf_per_in`))
    : newtonPerMm(1000 * num(inputs, `${key}_MN_per_m`));
