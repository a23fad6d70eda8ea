import {
  type BoltSegments,
  boltElongation,
  boltResilience,
  type ClampedPart,
  coneDiameter,
  coneSlope,
  effectiveBoltLength,
  embeddingAt,
  embeddingLoss,
  embeddingOf,
  forceRatio,
  inDegrees,
  inKilonewton,
  kN,
  type Loading,
  MPa,
  mm,
  olderEmbedding,
  partResilience,
  type Roughness,
  rigidJointRotation,
  rotationToPreload,
} from '@clampwright/core';
import { has, num, text } from '../inputs.ts';
import type { Evaluators, Inputs } from '../row.ts';

const joint = (inputs: Inputs) => (text(inputs, 'joint') === 'TTJ' ? 'tapped' : 'through bolt');
const modulus = (inputs: Inputs, key: string) => MPa(num(inputs, has(inputs, key) ? key : 'E_MPa'));

/** A row that says "thread: full length" has no shank. */
const bolt = (inputs: Inputs): BoltSegments => ({
  size: { diameter: mm(num(inputs, 'd_mm')), pitch: mm(num(inputs, 'P_mm')) },
  head: text(inputs, 'head') === 'hex' ? 'hexagon' : 'socket',
  joint: joint(inputs),
  clampLength: mm(num(inputs, 'l_K_mm')),
  shankLength: mm(has(inputs, 'l_shank_mm') ? num(inputs, 'l_shank_mm') : 0),
  modulus: modulus(inputs, 'E_S_MPa'),
  nutModulus: modulus(inputs, 'E_M_MPa'),
});
const part = (inputs: Inputs): ClampedPart => ({
  clampLength: mm(num(inputs, 'l_K_mm')),
  bearingFace: mm(num(inputs, 'd_w_mm')),
  hole: mm(num(inputs, 'd_h_mm')),
  outside: mm(num(inputs, 'D_A_mm')),
  modulus: modulus(inputs, 'E_P_MPa'),
  joint: joint(inputs),
});

/** resilience results stand in 1e-6 mm/N */
const MICRO = 1e-6;
const segment = (of: keyof ReturnType<typeof boltResilience>) => (inputs: Inputs) => boltResilience(bolt(inputs))[of] / MICRO;
const given = (inputs: Inputs) => [MICRO * num(inputs, 'delta_S'), MICRO * num(inputs, 'delta_P')] as const;
const embedding = (inputs: Inputs) => mm(num(inputs, 'f_Z_um') / 1000);
const preload = (inputs: Inputs) => kN(num(inputs, 'F_kN'));
const roughness = (inputs: Inputs) => text(inputs, 'Rz_class_um') as Roughness;
const PLACES = { thread: 'thread', 'per head or nut bearing face': 'face', 'per inner interface': 'interface' } as const;
const angle = (inputs: Inputs) => inDegrees(rotationToPreload(preload(inputs), mm(num(inputs, 'P_mm')), ...given(inputs)));

export const resilience: Evaluators = {
  delta_SK: segment('head'),
  delta_shank: segment('shank'),
  delta_free_thread: segment('freeThread'),
  delta_GM: segment('engaged'),
  delta_S: segment('whole'),
  tan_phi: (inputs) => coneSlope(part(inputs)),
  'D_A,Gr': (inputs) => coneDiameter(part(inputs)),
  delta_P: (inputs) => partResilience(part(inputs)) / MICRO,
  Phi_K: (inputs) => forceRatio(...given(inputs)),
  Phi_n: (inputs) => forceRatio(...given(inputs), num(inputs, 'n')),
  F_Z: (inputs) => inKilonewton(embeddingLoss(embedding(inputs), ...given(inputs))),
  theta_snug_to_F: angle,
  bolt_elongation: (inputs) => 1000 * boltElongation(preload(inputs), MICRO * num(inputs, 'delta_S')),
  preload_loss_fraction: (inputs) => embeddingLoss(embedding(inputs), ...given(inputs)) / preload(inputs),
  'preload_loss_fraction,fullthread': (inputs) =>
    embeddingLoss(embedding(inputs), boltResilience(bolt(inputs)).whole, partResilience(part(inputs))) / preload(inputs),
  'theta_snug_to_F,fullthread': (inputs) =>
    inDegrees(
      rotationToPreload(preload(inputs), mm(num(inputs, 'P_mm')), boltResilience(bolt(inputs)).whole, partResilience(part(inputs))),
    ),
  f_Z_table: (inputs) =>
    1000 * embeddingAt(text(inputs, 'load') as Loading, roughness(inputs), PLACES[text(inputs, 'where') as keyof typeof PLACES]),
  f_Z_sum: (inputs) =>
    1000 * embeddingOf(text(inputs, 'load') as Loading, roughness(inputs), num(inputs, 'bearing_faces'), num(inputs, 'inner_interfaces')),
  f_Z_total_old: (inputs) => {
    const total = olderEmbedding(text(inputs, 'finish') as 'turned', num(inputs, 'interfaces_incl_thread'));
    return total === undefined ? null : 1000 * total;
  },
  'theta_MIL-HDBK-60': (inputs) =>
    inDegrees(
      rigidJointRotation(MPa(num(inputs, 'f_t_MPa')), mm(num(inputs, 'L_B_mm')), MPa(num(inputs, 'E_MPa')), mm(num(inputs, 'lead_mm'))),
    ),
  'L_B_MIL-HDBK-60': (inputs) =>
    effectiveBoltLength({
      diameter: mm(num(inputs, 'd_mm')),
      stressDiameter: mm(num(inputs, 'd_ts_mm')),
      shank: mm(num(inputs, 'L_S_mm')),
      joint: mm(num(inputs, 'L_J_mm')),
      head: mm(num(inputs, 'H_B_mm')),
      nut: mm(num(inputs, 'H_N_mm')),
    }),
};
