import {
  circulant,
  type JointCompliance,
  jointCompliance,
  lastPassTargets,
  looseJoint,
  onePassTargets,
  plateCompliance,
  play,
  type RingSection,
  ringCompliance,
  type StepRule,
} from '@clampwright/core';

/** A finite-element joint: dimensions, its members' flexibility, and what sequences leave. Format: rows/interaction. */
export interface InteractionCase {
  readonly id: string;
  readonly geometry: {
    readonly rbc?: number;
    readonly lx?: number;
    readonly ly?: number;
    readonly holes?: readonly (readonly [number, number])[];
    readonly t: number;
    readonly support?: 'mirror' | 'fixed';
    readonly layers: readonly CaseLayer[];
  };
  readonly materials: Readonly<Record<string, { readonly E: number; readonly nu: number }>>;
  readonly bolts: { readonly count: number; readonly hole_diameter: number; readonly washer_diameter: number; readonly target_N: number };
  readonly flexibility: {
    readonly member_row?: readonly number[];
    readonly member_matrix?: readonly (readonly number[])[];
    readonly bolt_compliance: number;
  };
  readonly sequences: readonly CaseSequence[];
  readonly optimal_one_pass?: CaseTargets;
  readonly optimal_one_pass_star?: CaseTargets;
  readonly optimal_last_pass_after_70pct_star?: {
    readonly first_pass: { readonly order: readonly number[]; readonly targets_N: number };
    readonly last_pass_order: readonly number[];
    readonly last_pass_targets_N: readonly number[];
  };
}

interface CaseLayer {
  readonly name: string;
  readonly t: number;
  readonly n: number;
  readonly grade?: number;
  readonly mat: string;
  readonly r1?: number;
  readonly r2?: number;
  readonly boxes?: readonly (readonly number[])[];
  readonly minus?: readonly (readonly number[])[];
}

interface CaseSequence {
  readonly name: string;
  readonly rule: 'exact' | 'tighten_only';
  readonly untightened: 'absent' | 'snug';
  readonly order: readonly number[] | readonly (readonly number[])[];
  readonly targets_N: readonly number[];
  readonly final_N: readonly number[];
  readonly history?: readonly { readonly bolt: number; readonly F_N: readonly number[] }[];
}

interface CaseTargets {
  readonly order: readonly number[];
  readonly targets_N: readonly number[];
  readonly final_force_N: number;
}

export interface CaseResult {
  readonly id: string;
  /** largest error of final forces, histories and one-pass targets with the file's own matrix, N and % of target */
  readonly givenN: number;
  readonly givenPercent: number;
  /** largest error of final forces from dimensions alone, % of target */
  readonly modelPercent: number;
}

export const isInteractionCase = (value: unknown): value is InteractionCase =>
  typeof value === 'object' && value !== null && ['geometry', 'flexibility', 'sequences', 'bolts'].every((key) => key in value);

/** Holds play-back and model against one finite-element joint. */
export function judgeCase(one: InteractionCase): CaseResult {
  const { flexibility, bolts } = one;
  const members = flexibility.member_matrix ?? circulant(flexibility.member_row!);
  const given = compliance(members, flexibility.bolt_compliance);
  const givenN = Math.max(...one.sequences.map((sequence) => sequenceError(given, sequence, true)), ...targetErrors(one, given));
  const modelled = compliance(one.geometry.rbc === undefined ? plateModel(one) : ringModel(one), flexibility.bolt_compliance);
  const errors = one.sequences.map((sequence) => sequenceError(modelled, sequence, false));
  return { id: one.id, givenN, givenPercent: (100 * givenN) / bolts.target_N, modelPercent: (100 * Math.max(...errors)) / bolts.target_N };
}

function compliance(members: readonly ArrayLike<number>[], bolt: number): JointCompliance {
  const joint = jointCompliance(members, bolt);
  if (!joint.ok) throw new Error(joint.notices.map(({ code }) => code).join(', '));
  return joint.value;
}

const RULES: Readonly<Record<CaseSequence['rule'], StepRule>> = { exact: 'exact', tighten_only: 'tighten only' };

function sequenceError(joint: JointCompliance, sequence: CaseSequence, withHistory: boolean): number {
  const state = looseJoint(joint, sequence.untightened);
  const orders = Array.isArray(sequence.order[0])
    ? (sequence.order as readonly (readonly number[])[])
    : [sequence.order as readonly number[]];
  let worst = 0;
  let step = 0;
  play(
    state,
    orders.map((order, i) => ({ order, target: sequence.targets_N[i]! })),
    RULES[sequence.rule],
    () => {
      const truth = withHistory ? sequence.history?.[step]?.F_N : undefined;
      if (truth) worst = Math.max(worst, largestDifference(state.force, truth));
      step += 1;
    },
  );
  return Math.max(worst, largestDifference(state.force, sequence.final_N));
}

function targetErrors(one: InteractionCase, joint: JointCompliance): number[] {
  const single = [one.optimal_one_pass, one.optimal_one_pass_star].flatMap((optimum) => {
    if (!optimum) return [];
    const found = onePassTargets(joint, optimum.order, new Float64Array(joint.size).fill(optimum.final_force_N));
    return [largestDifference(found, optimum.targets_N)];
  });
  const last = one.optimal_last_pass_after_70pct_star;
  if (!last) return single;
  const state = looseJoint(joint);
  play(state, [{ order: last.first_pass.order, target: last.first_pass.targets_N }]);
  const final = new Float64Array(joint.size).fill(one.bolts.target_N);
  const found = lastPassTargets(state, last.last_pass_order, final);
  return [...single, largestDifference(found, last.last_pass_targets_N)];
}

function largestDifference(found: ArrayLike<number>, truth: ArrayLike<number>): number {
  let worst = 0;
  for (let i = 0; i < truth.length; i += 1) worst = Math.max(worst, Math.abs(found[i]! - truth[i]!));
  return worst;
}

/** Hub and wall lie inside the bolt circle, or outside it: no hole goes through them. */
const UNPIERCED = ['hub', 'shell/pipe wall'];

function ringModel({ geometry, materials, bolts }: InteractionCase): Float64Array[] {
  const section: RingSection = {
    boltCount: bolts.count,
    circle: geometry.rbc!,
    holeDiameter: bolts.hole_diameter,
    washerDiameter: bolts.washer_diameter,
    loaded: geometry.layers.findIndex(({ name }) => name === 'flange plate'),
    contact: 'gasket' in materials ? 'gasket' : 'metal',
    layers: geometry.layers.map(({ name, t, n, grade, mat, r1, r2 }) => ({
      thickness: t,
      inner: r1!,
      outer: r2!,
      modulus: materials[mat]!.E,
      poisson: materials[mat]!.nu,
      rows: n,
      growth: grade ?? 1,
      pierced: !UNPIERCED.includes(name),
    })),
  };
  return circulant(ringCompliance(section));
}

function plateModel({ geometry, materials, bolts }: InteractionCase): Float64Array[] {
  const [bed, plate, column] = geometry.layers;
  // the stub's wall, half-way between its outer and inner outline
  const wall = (side: 2 | 3) => (column!.boxes![0]![side]! + column!.minus![0]![side]!) / 2;
  return plateCompliance({
    width: geometry.lx!,
    height: geometry.ly!,
    thickness: geometry.t,
    modulus: materials[plate!.mat]!.E,
    poisson: materials[plate!.mat]!.nu,
    bedThickness: bed!.t,
    bedModulus: materials[bed!.mat]!.E,
    bolts: geometry.holes!.map(([x, y]) => ({ x, y })),
    holeDiameter: bolts.hole_diameter,
    washerDiameter: bolts.washer_diameter,
    support: geometry.support === 'mirror' ? 'mirrored' : 'ground',
    ...(column?.boxes && column.minus ? { stub: { halfWidth: wall(2), halfHeight: wall(3) } } : {}),
  });
}
