import {
  ARBITRATION,
  arcOf,
  type DtiType,
  degrees,
  directTensionIndicator,
  greatestShortBoltTorque,
  greatestTestTorque,
  inDegrees,
  inInch,
  initialTestTension,
  inKilonewton,
  inKip,
  inLbf,
  inLbfFt,
  kip,
  lbf,
  leastRefusalsInstalled,
  leastTwistOffTension,
  minimumPretension,
  mm,
  mostRefusalsAtVerification,
  nutRotation,
  type RcscEdition,
  rotationTolerance,
  SLIP_MULTIPLIER,
  slipCoefficient,
  type TwistOffGrade,
  testRotation,
  turnTestTension,
  VERIFICATION_ASSEMBLIES,
  verificationTension,
  WRENCH_VERIFICATIONS_PER_WORK_DAY,
  washerThicknessOver,
} from '@clampwright/core';
import { has, num, text } from '../inputs.ts';
import { valueOrNull } from '../outcome-value.ts';
import type { Evaluators, Inputs } from '../row.ts';
import { inchesOf } from './inch-fastener.ts';

/** Which edition of the rules a row means; AISC 360-16 follows the newest. */
function edition(inputs: Inputs): RcscEdition {
  const named = has(inputs, 'edition') ? text(inputs, 'edition') : '2014';
  if (/2020|360-16|360-22/.test(named)) return '2020';
  return /before 2009|2004/.test(named) ? '2004' : '2014';
}
const gradeId = (inputs: Inputs) => `F3125 ${text(inputs, 'grade')}`;
const diameter = (inputs: Inputs) => (has(inputs, 'd_mm') ? mm(num(inputs, 'd_mm')) : inchesOf(inputs));

export function pretension(inputs: Inputs) {
  const found = valueOrNull(minimumPretension(gradeId(inputs), diameter(inputs), edition(inputs)));
  return found && (has(inputs, 'd_mm') ? inKilonewton(found.value) : inKip(found.value));
}

export const structuralPretension: Evaluators = { T_m: pretension };

const givenPretension = (inputs: Inputs) => kip(num(inputs, 'T_m_kip'));

export const preinstallVerification: Evaluators = {
  T_verif: (inputs) => inKip(verificationTension(givenPretension(inputs))),
  F_min_install_test: (inputs) => {
    const found = valueOrNull(leastTwistOffTension(text(inputs, 'spec') as TwistOffGrade, inchesOf(inputs)));
    return found && inLbf(found.value);
  },
  n_assemblies: () => VERIFICATION_ASSEMBLIES,
};

const FACES: Readonly<Record<string, 0 | 1 | 2>> = {
  'both faces normal': 0,
  'one face sloped <=1:20': 1,
  'both faces sloped <=1:20': 2,
};

export const turnOfNut: Evaluators = {
  rotation: (inputs) => {
    const sloped = FACES[text(inputs, 'faces')];
    if (sloped === undefined) return undefined;
    const found = valueOrNull(nutRotation(inchesOf(inputs), inchesOf(inputs, 'L_in'), sloped));
    return found && inDegrees(found.value);
  },
  rotation_tolerance: (inputs) => {
    const { minus, plus } = rotationTolerance(degrees(num(inputs, 'rotation_deg')), edition(inputs));
    return [-inDegrees(minus), inDegrees(plus)];
  },
};

export const directTensionIndicators: Evaluators = {
  compression_load_range: (inputs) => {
    const found = valueOrNull(directTensionIndicator(text(inputs, 'type') as DtiType, inchesOf(inputs)));
    return found && [inKip(found.low), inKip(found.high)];
  },
  'max_refusals_at_1.05Tm': (inputs) => mostRefusalsAtVerification(num(inputs, 'spaces')),
  min_refusals_installed: (inputs) => leastRefusalsInstalled(num(inputs, 'spaces')),
};

/** A length, in diameters, that lies in the band the row names. */
const BANDS: Readonly<Record<string, number>> = { le4d: 4, gt4d: 8, 'gt4d-le8d': 8, gt4d_le8d: 8, le8d: 8, gt8d: 12, 'gt8d-le12d': 12 };

export const rotationalCapacity: Evaluators = {
  F_initial: (inputs) => {
    const found = valueOrNull(minimumPretension(gradeId(inputs), inchesOf(inputs), '2014'));
    return found && inKip(initialTestTension(found.value));
  },
  F_turn_test_min: (inputs) => inKip(turnTestTension(givenPretension(inputs))),
  T_max_short_bolt: (inputs) => inLbfFt(greatestShortBoltTorque(kip(num(inputs, 'P_kip')), inchesOf(inputs))),
  T_max: (inputs) => inLbfFt(greatestTestTorque(lbf(num(inputs, 'P_measured_lbf')), inchesOf(inputs))),
  rotation_total: (inputs) => {
    const ratio = BANDS[text(inputs, 'band')];
    const found = ratio === undefined ? undefined : valueOrNull(nutRotation(mm(1), mm(ratio), 0));
    return found && inDegrees(testRotation(found.value));
  },
};

export const arbitration: Evaluators = {
  arbitration_sample_size: () => ARBITRATION.assemblies,
  arbitration_fraction_of_bolts: () => ARBITRATION.share,
  arbitration_min_bolts_per_connection: () => ARBITRATION.least,
  arbitration_rotation: () => inDegrees(ARBITRATION.rotation),
  arc_at_12in_radius: (inputs) => inInch(arcOf(degrees(num(inputs, 'angle_deg')), inchesOf(inputs, 'radius_in'))),
};

const slip = (faying: 'A' | 'B') => (inputs: Inputs) => {
  const named = /(?:AISC 360-\d{2}|RCSC \d{4})/.exec(text(inputs, 'edition'));
  return named ? (valueOrNull(slipCoefficient(faying, named[0]))?.value ?? null) : undefined;
};
export const slipRows: Evaluators = { mu_class_A: slip('A'), mu_class_B: slip('B'), D_u: () => SLIP_MULTIPLIER.value };

export const calibratedWrench: Evaluators = { verifications_per_work_day_min: () => WRENCH_VERIFICATIONS_PER_WORK_DAY };

export const installation: Evaluators = {
  washer_min_thickness: (inputs) => {
    const hole = /long/.test(text(inputs, 'hole'))
      ? 'long-slotted'
      : /oversized|slot/.test(text(inputs, 'hole'))
        ? 'oversized'
        : 'standard';
    const found = valueOrNull(washerThicknessOver(hole, gradeId(inputs), inchesOf(inputs)));
    return found?.value === undefined || found.value === null ? null : inInch(found.value);
  },
};
