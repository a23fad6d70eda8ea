import {
  addToGrip,
  type BoltLoad,
  boltLoad,
  capScrewThreadLength,
  externalMinorDiameter,
  findGrade,
  INCH_NUT_PROOF,
  INCH_THREADS,
  type InchItem,
  type InchNutGrade,
  inch,
  inchItem,
  inchNutProofLoad,
  inchThread,
  inInch,
  inInch2,
  inKsi,
  inLbf,
  internalMinorDiameter,
  nominalRootArea,
  nominalStressArea,
  pitchDiameter,
  rootAreaDiameter,
  type Strength,
  strengthAt,
  structuralThreadLength,
  type Thread,
} from '@clampwright/core';
import { has, num, text } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluators, Inputs } from '../row.ts';

export const inchesOf = (inputs: Inputs, key = 'd_in') => inch(num(inputs, key));

/** The thread of a size and a number of threads per inch, of the series the row names if it names one. */
export function threadOf(inputs: Inputs): Thread | undefined {
  const pitch = 25.4 / num(inputs, 'tpi');
  return INCH_THREADS.find(
    (one) =>
      Math.abs(one.diameter - inchesOf(inputs)) < 1e-6 &&
      Math.abs(one.pitch - pitch) < 1e-6 &&
      (!has(inputs, 'series') || one.series === text(inputs, 'series')),
  );
}
/** The thread a flange stud or a structural bolt of that size has. */
const usualThread = (inputs: Inputs, usage: 'flange stud' | 'structural') =>
  inchThread(inchesOf(inputs), usage === 'flange stud' && num(inputs, 'd_in') > 1 ? '8UN' : 'UNC');

const basic = (of: typeof pitchDiameter) => (inputs: Inputs) => inInch(of(inchesOf(inputs), inch(1 / num(inputs, 'tpi'))));
const area = (of: typeof nominalStressArea) => (inputs: Inputs) => {
  const thread = threadOf(inputs);
  return thread && inInch2(of(thread));
};

export const inchThreads: Evaluators = {
  A_t: area(nominalStressArea),
  A_r: area(nominalRootArea),
  d_2: basic(pitchDiameter),
  d_3_external_ref: basic(externalMinorDiameter),
  d_root_for_area: basic(rootAreaDiameter),
  D_1_internal: basic(internalMinorDiameter),
};

const ITEMS: Readonly<Record<string, InchItem>> = {
  'heavy hex nut': 'heavy hex nut',
  'hex nut': 'hex nut',
  'hex bolt / hex cap screw': 'hex bolt',
  'heavy hex structural bolt head': 'heavy hex structural bolt',
};
const item = (inputs: Inputs) => {
  const known = ITEMS[text(inputs, 'item')];
  return known && inchItem(inchesOf(inputs), known);
};
const inches = (value: Parameters<typeof inInch>[0] | null | undefined) => (value === null || value === undefined ? null : inInch(value));

export const inchHexagons: Evaluators = {
  F: (inputs) => inches(item(inputs)?.acrossFlats),
  H: (inputs) => inches(item(inputs)?.height),
};

export const inchLengths: Evaluators = {
  add_to_grip: (inputs) => inches(valueOrNull(addToGrip(inchesOf(inputs), num(inputs, 'washers')))),
  thread_length: (inputs) => inches(valueOrNull(structuralThreadLength(inchesOf(inputs)))),
  L_T: (inputs) => inInch(capScrewThreadLength(inchesOf(inputs), inchesOf(inputs, 'L_in'))),
};

const strength = (of: (one: Strength) => Strength['proof'] | undefined) => (inputs: Inputs) => {
  const grade = valueOrNull(findGrade(text(inputs, 'spec')));
  const found = grade && valueOrNull(strengthAt(grade, inchesOf(inputs)));
  const stress = found && of(found);
  return stress === null || stress === undefined ? null : inKsi(stress);
};

export const inchStrengths: Evaluators = {
  S_p: strength((one) => one.proof),
  S_y: strength((one) => one.yield),
  S_ut: strength((one) => one.tensile),
  S_ut_max: strength((one) => one.tensileMax),
};

const load = (which: BoltLoad) => (inputs: Inputs) => {
  const grade = valueOrNull(findGrade(text(inputs, 'spec')));
  const thread = usualThread(inputs, 'structural');
  const found = grade && thread && valueOrNull(boltLoad(grade, thread, which));
  return found ? inLbf(found) : null;
};
/** `ASTM A194 2H heavy hex` and the like */
const nutGrade = (inputs: Inputs) => text(inputs, 'spec').replace('ASTM ', '').replace(' heavy hex', '');

export const inchProofLoads: Evaluators = {
  proof_load: load('proof'),
  tensile_min_load: load('tensile'),
  tensile_max_load: load('tensileMax'),
  F_nut_proof: (inputs) => {
    const thread = usualThread(inputs, 'flange stud');
    const found = thread && valueOrNull(inchNutProofLoad(nutGrade(inputs), thread));
    return found ? inLbf(found.value) : null;
  },
  S_nut_proof: (inputs) => inKsi(INCH_NUT_PROOF[nutGrade(inputs) as InchNutGrade].value),
};
