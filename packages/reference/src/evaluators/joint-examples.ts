import {
  alternatingStress,
  boltsForLoadFactor,
  capScrewThreadLength,
  coneFace,
  frustumStiffness,
  gripOf,
  inch,
  inchItem,
  inInch,
  inKip,
  inKsi,
  inSeries,
  jointConstant,
  kip,
  layeredStiffness,
  loadFactor,
  MPa,
  memberStiffness,
  mm,
  N,
  newtonPerMm,
  preloadFromProof,
  roundedUpLength,
  separationFactor,
  shankArea,
  shankInGrip,
  stressOn,
  tappedGrip,
  threadInGrip,
  throughBoltLength,
  twoAreaStiffness,
  wholeBolts,
  yieldFactor,
} from '@clampwright/core';
import { has, list, num } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';
import {
  areaGiven,
  inMlbfPerInch,
  lengthGiven,
  modulusGiven,
  stiffnessFromMlbfPerInch,
  stiffnessGiven,
  stressGiven,
} from './given-unit.ts';
import { diameter, exponential, perInch, torqueOf, twoAreas } from './joint-given.ts';

const frustum = (inputs: Inputs) =>
  frustumStiffness({
    modulus: modulusGiven(inputs),
    diameter: diameter(inputs),
    thickness: lengthGiven(inputs, 't'),
    face: lengthGiven(inputs, 'D'),
  });

const preload = (inputs: Inputs) =>
  has(inputs, 'F_i_kip')
    ? kip(num(inputs, 'F_i_kip'))
    : preloadFromProof(num(inputs, 'preload_fraction'), areaGiven(inputs, 'A_t'), stressGiven(inputs, 'S_p'));

/** Joint constant: as given, of given stiffnesses, or of the through bolt and grip the row describes. */
function constantOf(inputs: Inputs): number {
  if (has(inputs, 'C')) return num(inputs, 'C');
  if (has(inputs, 'k_b_Mlbf_per_in')) return jointConstant(stiffnessGiven(inputs, 'k_b'), stiffnessGiven(inputs, 'k_m'));
  if (has(inputs, 'k_b_over_E')) return jointConstant(newtonPerMm(num(inputs, 'k_b_over_E')), newtonPerMm(num(inputs, 'k_p_over_E')));
  const [d, grip] = [diameter(inputs), lengthGiven(inputs, 'l')];
  const nut = inchItem(d, 'hex nut')!;
  const bolt = roundedUpLength(throughBoltLength(grip, nut.height, inch(1 / num(inputs, 'tpi'))), inch(0.25));
  const shankLength = shankInGrip(bolt, capScrewThreadLength(d, bolt));
  const bolts = twoAreaStiffness({
    modulus: modulusGiven(inputs, 'E_bolt'),
    shankArea: shankArea(d),
    shankLength,
    threadArea: areaGiven(inputs, 'A_t'),
    threadLength: threadInGrip(grip, shankLength),
  });
  return jointConstant(bolts, memberStiffness(modulusGiven(inputs, 'E_iron'), d, grip));
}

/** The load of one bolt, or of all of them where the row asks how many there must be. */
const loaded = (inputs: Inputs) => ({
  constant: constantOf(inputs),
  preload: preload(inputs),
  load: N(kip(num(inputs, 'P_kip')) / (has(inputs, 'bolt_count') ? num(inputs, 'bolt_count') : 1)),
});
const proof = (inputs: Inputs) => stressGiven(inputs, 'S_p');
const threadArea = (inputs: Inputs) => areaGiven(inputs, 'A_t');
const atPreload = (inputs: Inputs) => stressOn(preload(inputs), threadArea(inputs));
const alternating = (inputs: Inputs) =>
  alternatingStress(has(inputs, 'C') ? num(inputs, 'C') : cappedConstant(inputs), loadRange(inputs), threadArea(inputs));
const loadRange = (inputs: Inputs) =>
  has(inputs, 'P_kip') ? kip(num(inputs, 'P_kip')) : kip(num(inputs, 'P_max_kip') - num(inputs, 'P_min_kip'));

/** Joint constant of a cap screw in a tapped base: washer and cover in steel, the base in iron. */
function cappedConstant(inputs: Inputs): number {
  const d = diameter(inputs);
  const head = gripOf(lengthGiven(inputs, 'cover'), lengthGiven(inputs, 'washer'));
  const grip = tappedGrip(head, d, lengthGiven(inputs, 'base'));
  const steel = modulusGiven(inputs, 'E_steel');
  const layers = [
    { modulus: steel, thickness: head },
    { modulus: modulusGiven(inputs, 'E_iron'), thickness: mm(grip - head) },
  ];
  const threaded = {
    modulus: steel,
    shankArea: threadArea(inputs),
    shankLength: mm(0),
    threadArea: threadArea(inputs),
    threadLength: grip,
  };
  return jointConstant(twoAreaStiffness(threaded), layeredStiffness(d, layers));
}

/** Textbook joints as whole examples, each row with the givens of all of it (us-flange). */
export const jointExamples: Evaluators = {
  'joint.l': (inputs) => inInch(gripOf(...list(inputs, 't_in').map(inch))),
  'joint.k_1': (inputs) => inMlbfPerInch(frustum(inputs)),
  'joint.k_2': (inputs) => inMlbfPerInch(frustum(inputs)),
  'joint.k_3': (inputs) => inMlbfPerInch(frustum(inputs)),
  'joint.k_m_steel_iron': (inputs) => inMlbfPerInch(inSeries(...list(inputs, 'k_Mlbf_per_in').map(stiffnessFromMlbfPerInch))),
  'joint.k_m_all_steel': (inputs) => inMlbfPerInch(inSeries(frustum(inputs), frustum(inputs))),
  'joint.k_m_exponential': (inputs) => inMlbfPerInch(exponential(inputs)),
  'joint.k_b': (inputs) => inMlbfPerInch(twoAreas(inputs)),
  'joint.L_min': (inputs) => inInch(throughBoltLength(lengthGiven(inputs, 'l'), lengthGiven(inputs, 'H'), inch(1 / num(inputs, 'tpi')))),
  'joint.L_used': (inputs) => inInch(roundedUpLength(lengthGiven(inputs, 'L_min'), inch(0.25))),
  'joint.k_m': (inputs) => inMlbfPerInch(memberStiffness(modulusGiven(inputs), diameter(inputs), lengthGiven(inputs, 'l'))),
  'joint.C': constantOf,
  'joint.F_i': (inputs) => inKip(preload(inputs)),
  'joint.bolt_count_real': (inputs) =>
    boltsForLoadFactor(loaded(inputs), num(inputs, has(inputs, 'n_L') ? 'n_L' : 'n'), proof(inputs), threadArea(inputs)),
  'joint.bolt_count_used': (inputs) => wholeBolts(num(inputs, 'bolt_count_real')),
  'joint.n_L': (inputs) => loadFactor(loaded(inputs), proof(inputs), threadArea(inputs)),
  'joint.n_p': (inputs) => yieldFactor(loaded(inputs), proof(inputs), threadArea(inputs)),
  'joint.n_0': (inputs) => separationFactor(loaded(inputs)),
  'joint.T': (inputs) => inKip(perInch(torqueOf(inputs, preload(inputs)))),
  'joint.h': (inputs) => inInch(gripOf(lengthGiven(inputs, 't_1'), lengthGiven(inputs, 't_washer'))),
  'joint.l_eff': (inputs) => inInch(tappedGrip(lengthGiven(inputs, 'h'), diameter(inputs), lengthGiven(inputs, 'base'))),
  'joint.D_2': (inputs) => inInch(coneFace(diameter(inputs))),
  'joint.sigma_i': (inputs) => inKsi(atPreload(inputs)),
  'joint.sigma_a': (inputs) => inKsi(alternating(inputs)),
  'joint.sigma_m': (inputs) => inKsi(MPa(atPreload(inputs) + alternating(inputs))),
};
