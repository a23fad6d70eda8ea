import {
  en1092Flange,
  type FlangeTightening,
  flangeTorque,
  flangeTorqueArm,
  greatestForce,
  groupScatter,
  inKilonewton,
  inNewtonMetre,
  kN,
  leastNominalForce,
  mm,
  pnFlangeHole,
  singleBoltScatter,
} from '@clampwright/core';
import { has, num, text } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluators, Inputs } from '../row.ts';

const flange = (inputs: Inputs) => valueOrNull(en1092Flange(num(inputs, 'DN'), num(inputs, 'PN')));

export const pnFlanges: Evaluators = {
  bolting: (inputs) => {
    const found = flange(inputs);
    return found && `${found.bolts}x${found.bolt}`;
  },
  bolt_circle: (inputs) => flange(inputs)?.boltCircle ?? null,
  outside_diameter: (inputs) => flange(inputs)?.outsideDiameter ?? null,
  hole_diameter: (inputs) => (has(inputs, 'bolt_mm') ? (pnFlangeHole(mm(num(inputs, 'bolt_mm'))) ?? null) : (flange(inputs)?.hole ?? null)),
};

/** The rows' names for the ways of tightening. */
const METHODS: Readonly<Record<string, FlangeTightening>> = {
  'hand-wrench-operator-feel': 'wrench by feel',
  'impact-wrench': 'impact wrench',
  'torque-wrench': 'torque wrench',
  'hydraulic-tensioner-pressure': 'tensioner by pressure',
  'hydraulic-tensioner-elongation': 'tensioner by elongation',
  'elongation-measured': 'elongation measured',
  'turn-of-nut-near-yield': 'turn of nut near yield',
  'torque-and-turn-near-yield': 'torque and turn near yield',
};

function single(inputs: Inputs) {
  const method = METHODS[text(inputs, 'method')];
  return method && singleBoltScatter(method, has(inputs, 'mu') ? num(inputs, 'mu') : 0);
}

export const boltForceScatter: Evaluators = {
  'epsilon_1-': (inputs) => single(inputs)?.minus,
  'epsilon_1+': (inputs) => single(inputs)?.plus,
  epsilon_nB: (inputs) => groupScatter(num(inputs, 'epsilon_1'), num(inputs, 'n_B')),
  F_B0nom_min: (inputs) => inKilonewton(leastNominalForce(kN(num(inputs, 'F_B0req_kN')), num(inputs, 'epsilon_minus'))),
  F_B0max: (inputs) => inKilonewton(greatestForce(kN(num(inputs, 'F_B0nom_kN')), num(inputs, 'epsilon_plus'))),
};

const arm = (inputs: Inputs, key = 'd_mm') =>
  flangeTorqueArm({ diameter: mm(num(inputs, key)), pitch: mm(num(inputs, 'P_mm')) }, num(inputs, 'mu'));

export const flangeTorques: Evaluators = {
  k_B: (inputs) => arm(inputs),
  'M_t,nom': (inputs) => inNewtonMetre(flangeTorque(kN(num(inputs, 'F_B0nom_kN')), num(inputs, 'n_B'), arm(inputs))),
};

/** EN 1591-1 worked example: from required force to torque and greatest force. */
function example(inputs: Inputs) {
  const method = METHODS[text(inputs, 'method')];
  if (!method) return undefined;
  const one = singleBoltScatter(method, num(inputs, 'mu'));
  const bolts = num(inputs, 'n_B');
  const nominal = leastNominalForce(kN(num(inputs, 'F_B0req_kN')), groupScatter(one.minus, bolts));
  return { one, bolts, nominal, greatest: greatestForce(nominal, groupScatter(one.plus, bolts)) };
}

export const flangeWorkedExample: Evaluators = {
  epsilon_1: (inputs) => example(inputs)?.one.plus,
  epsilon_nB: (inputs) => {
    const found = example(inputs);
    return found && groupScatter(found.one.plus, found.bolts);
  },
  F_B0nom_min: (inputs) => {
    const found = example(inputs);
    return found && inKilonewton(found.nominal);
  },
  k_B: (inputs) => arm(inputs, 'bolt_mm'),
  'M_t,nom': (inputs) => {
    const found = example(inputs);
    return found && inNewtonMetre(flangeTorque(found.nominal, found.bolts, arm(inputs, 'bolt_mm')));
  },
  F_B0max: (inputs) => {
    const found = example(inputs);
    return found && inKilonewton(found.greatest);
  },
};
