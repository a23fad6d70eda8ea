import { byNutFactor, exponentialStiffness, inch, mm, N, torqueForPreload, twoAreaStiffness } from '@clampwright/core';
import { num } from '../inputs.ts';
import type { Inputs } from '../row.ts';
import { areaGiven, lengthGiven, modulusGiven } from './given-unit.ts';
import { rowSource } from './row-source.ts';

export const diameter = (inputs: Inputs) => lengthGiven(inputs, 'd');

export const twoAreas = (inputs: Inputs) =>
  twoAreaStiffness({
    modulus: modulusGiven(inputs),
    shankArea: areaGiven(inputs, 'A_d'),
    shankLength: lengthGiven(inputs, 'l_d'),
    threadArea: areaGiven(inputs, 'A_t'),
    threadLength: lengthGiven(inputs, 'l_t'),
  });

export const exponential = (inputs: Inputs) =>
  exponentialStiffness(modulusGiven(inputs), diameter(inputs), lengthGiven(inputs, 'l'), { A: num(inputs, 'A'), B: num(inputs, 'B') });

export function torqueOf(inputs: Inputs, force: ReturnType<typeof N>) {
  return torqueForPreload(byNutFactor(num(inputs, 'K'), rowSource), { diameter: diameter(inputs), pitch: mm(0) }, force);
}

/** kip·in or lbf·in: a torque over an inch is a force. */
export const perInch = (torque: number) => N(torque / inch(1));
