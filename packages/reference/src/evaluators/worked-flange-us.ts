import {
  assemblyBoltStress,
  b165Flange,
  basicSeatingWidth,
  boltDesign,
  byCoefficients,
  byNutFactor,
  findGrade,
  forceOn,
  gasketArea,
  gasketLoads,
  inch2,
  inInch,
  inInch2,
  inKsi,
  inLbf,
  inLbfFt,
  inPsi,
  ksi,
  lbfFt,
  MPa,
  mm,
  N,
  nominalRootArea,
  nominalStressArea,
  pitchDiameter,
  preloadBand,
  preloadForTorque,
  psi,
  starOrder,
  strengthAt,
  stressOn,
  torqueCoefficient,
  torqueForPreload,
  totalBoltArea,
} from '@clampwright/core';
import { has, num, text } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { chord, roundWindow, tableTorque } from './flange-us.ts';
import { inchesOf, threadOf } from './inch-fastener.ts';
import { rowSource } from './row-source.ts';

const psiOf = (inputs: Inputs, key: string) => psi(num(inputs, key));
const share = (inputs: Inputs, key: string) => MPa(num(inputs, key) * psiOf(inputs, 'S_yb_psi'));
const nutFactor = (inputs: Inputs) => byNutFactor(num(inputs, 'K'), rowSource);
const size = (inputs: Inputs) => ({ diameter: inchesOf(inputs), pitch: mm(0) });
const area = (inputs: Inputs) => gasketArea(inchesOf(inputs, 'gasket_od_in'), inchesOf(inputs, 'gasket_id_in'));

const bySteps = (inputs: Inputs) =>
  assemblyBoltStress({
    gasketArea: area(inputs),
    boltArea: inch2(num(inputs, 'A_b_in2')),
    bolts: num(inputs, 'n_b'),
    targetGasketStress: psiOf(inputs, 'S_gT_psi'),
    boltLimits: { least: share(inputs, 'min_frac'), greatest: share(inputs, 'max_frac') },
    seatingStress: psiOf(inputs, 'S_gminS_psi'),
    greatestGasketStress: psiOf(inputs, 'S_gmax_psi'),
    operating: {
      gasketStress: psiOf(inputs, 'S_gminO_psi'),
      pressure: psiOf(inputs, 'P_psi'),
      innerDiameter: inchesOf(inputs, 'gasket_id_in'),
      remainingShare: num(inputs, 'phi_g'),
    },
  });
const checkLimit = (wanted: string) => (inputs: Inputs) => inPsi(bySteps(inputs).checks.find(({ name }) => name === wanted)!.limit);

export const assemblyStressExamples: Evaluators = {
  'PCC1_O.A_g': (inputs) => inInch2(area(inputs)),
  'PCC1_O.S_bsel_target': (inputs) => inPsi(bySteps(inputs).wanted),
  'PCC1_O.S_bsel_limited': (inputs) => inPsi(bySteps(inputs).selected),
  'PCC1_O.S_seating_required': checkLimit('seating'),
  'PCC1_O.S_operating_required': checkLimit('operating'),
  'PCC1_O.S_gasket_max': checkLimit('gasket crush'),
  'PCC1_O.T_b': (inputs) =>
    inLbfFt(torqueForPreload(nutFactor(inputs), size(inputs), forceOn(inch2(num(inputs, 'A_b_in2')), psiOf(inputs, 'S_psi')))),
};

const contact = (inputs: Inputs) => mm((inchesOf(inputs, 'gasket_od_in') - inchesOf(inputs, 'gasket_id_in')) / 2);
const basic = (inputs: Inputs) => basicSeatingWidth('1a', 'II', { contact: contact(inputs) })!;
const loads = (inputs: Inputs) =>
  gasketLoads({
    outer: inchesOf(inputs, 'gasket_od_in'),
    inner: inchesOf(inputs, 'gasket_id_in'),
    basicWidth: basic(inputs),
    m: num(inputs, 'm'),
    y: psiOf(inputs, 'y_psi'),
    pressure: psiOf(inputs, 'P_psi'),
  });
const boltArea = (inputs: Inputs) => totalBoltArea(num(inputs, 'n_b'), inch2(num(inputs, 'A_1_in2')));
const design = (inputs: Inputs) => boltDesign(loads(inputs), boltArea(inputs), psiOf(inputs, 'S_a_psi'), psiOf(inputs, 'S_b_psi'));

export const appendix2Examples: Evaluators = {
  'App2.N_contact_width': (inputs) => inInch(contact(inputs)),
  'App2.b_0': (inputs) => inInch(basic(inputs)),
  'App2.b': (inputs) => inInch(loads(inputs).width),
  'App2.G': (inputs) => inInch(loads(inputs).diameter),
  'App2.H': (inputs) => inLbf(loads(inputs).endForce),
  'App2.H_p': (inputs) => inLbf(loads(inputs).contactForce),
  'App2.W_m1': (inputs) => inLbf(loads(inputs).operating),
  'App2.W_m2': (inputs) => inLbf(loads(inputs).seating),
  'App2.A_m1': (inputs) => inInch2(design(inputs).operatingArea),
  'App2.A_m2': (inputs) => inInch2(design(inputs).seatingArea),
  'App2.A_m': (inputs) => inInch2(design(inputs).neededArea),
  'App2.A_b': (inputs) => inInch2(boltArea(inputs)),
  'App2.W_seating': (inputs) => inLbf(design(inputs).seatingLoad),
};

const flange = (inputs: Inputs) => valueOrNull(b165Flange(text(inputs, 'NPS'), num(inputs, 'flange_class')));
const boltForce = (inputs: Inputs) => forceOn(nominalRootArea(threadOf(inputs)!), ksi(num(inputs, 'S_root_ksi')));

export const flangeTorqueExamples: Evaluators = {
  'flange_torque.bolts': (inputs) => flange(inputs)?.bolts ?? null,
  'flange_torque.A_r': (inputs) => inInch2(nominalRootArea(threadOf(inputs)!)),
  'flange_torque.F_bolt': (inputs) => inLbf(boltForce(inputs)),
  'flange_torque.T_K020': (inputs) => inLbfFt(torqueForPreload(nutFactor(inputs), size(inputs), boltForce(inputs))),
  'flange_torque.T_table': tableTorque,
  'flange_torque.W_total': (inputs) => inLbf(N(num(inputs, 'bolt_count') * boltForce(inputs))),
  'flange_torque.pct_yield_B7_root': (inputs) => {
    const grade = valueOrNull(findGrade('A193 B7'));
    const found = grade && valueOrNull(strengthAt(grade, inchesOf(inputs)))?.yield;
    return found ? (100 * ksi(num(inputs, 'S_root_ksi'))) / found : null;
  },
  'flange_torque.stress_on_A_t': (inputs) => inKsi(stressOn(boltForce(inputs), nominalStressArea(threadOf(inputs)!))),
  'flange_torque.pass1': (inputs) => roundWindow(1, num(inputs, 'T_ftlbf')),
  'flange_torque.pass2': (inputs) => roundWindow(2, num(inputs, 'T_ftlbf')),
  'flange_torque.order': (inputs) => starOrder(num(inputs, 'bolt_count')),
  'flange_torque.chord': chord,
};

const nominal = (inputs: Inputs) => preloadForTorque(nutFactor(inputs), size(inputs), lbfFt(num(inputs, 'T_ftlbf')));
const band = (inputs: Inputs) =>
  preloadBand(nominal(inputs), num(inputs, 'preload_uncertainty_fraction'), has(inputs, 'relaxation') ? num(inputs, 'relaxation') : 0);

export const preloadBandExamples: Evaluators = {
  'NASA_band.F_nom': (inputs) => inLbf(nominal(inputs)),
  'NASA_band.F_max': (inputs) => inLbf(band(inputs).greatest),
  'NASA_band.F_min': (inputs) => inLbf(band(inputs).least),
};

/** Long form: T = F·[P/2π + d₂·μ_t/(2·cos 30°) + D_e·μ_n/2]. */
const longFriction = (inputs: Inputs) => {
  const [thread, bearing] = has(inputs, 'mu_th') ? [num(inputs, 'mu_th'), num(inputs, 'mu_h')] : [num(inputs, 'mu'), num(inputs, 'mu')];
  return byCoefficients(thread, bearing, inchesOf(inputs, 'D_e_in'), rowSource);
};
const longTorque = (inputs: Inputs) => torqueForPreload(longFriction(inputs), threadOf(inputs)!, boltForce(inputs), 'linear');

export const longFormExamples: Evaluators = {
  'longform.d_2': (inputs) => inInch(pitchDiameter(threadOf(inputs)!.diameter, threadOf(inputs)!.pitch)),
  'longform.F': (inputs) => inLbf(boltForce(inputs)),
  'longform.T': (inputs) => inLbfFt(longTorque(inputs)),
  'longform.K_equiv': (inputs) => torqueCoefficient(longTorque(inputs), boltForce(inputs), inchesOf(inputs)),
};
