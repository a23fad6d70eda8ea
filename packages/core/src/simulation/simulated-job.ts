import type { JointCompliance } from '../interaction/joint-compliance.ts';
import type { PreloadWindow } from '../scatter/all-inside.ts';

/** A planned job as it is played: plain data, the same for every worker. */
export interface SimulatedJob {
  /** half the expanded uncertainty of each tool's certificate: one draw a run for all its pulls */
  readonly tools: readonly { readonly serial: string; readonly certificate: number }[];
  /** lots by id; one draw of the lot's mean a run */
  readonly lots: readonly string[];
  readonly joints: readonly SimulatedJoint[];
}

export interface SimulatedJoint {
  readonly tag: string;
  readonly parts: readonly SimulatedPart[];
  readonly rounds: readonly SimulatedRound[];
  /** how the bolts act on each other; absent: not at all */
  readonly members?: { readonly compliance: JointCompliance; readonly gasketSet: number };
}

/** Bolts of one joint that are alike. */
export interface SimulatedPart {
  /** 0-based */
  readonly bolts: readonly number[];
  readonly lot: number;
  /** coefficients of variation of the lot's mean and within the lot */
  readonly lotMean: number;
  readonly boltToBolt: number;
  /** preload the plan aims at: what lowest and highest are given as a share of, N */
  readonly target: number;
  readonly window: PreloadWindow;
  /** mm */
  readonly pitch: number;
  /** δ_S + δ_P, mm/N; absent: no angle, energy or embedding can be told */
  readonly resilience?: number;
  /** guide value of embedding, mm; absent where a gasket decides */
  readonly embedding?: number;
  /** preload at which bolts of the least yield strength yield under torsion, N */
  readonly yield?: number;
}

/** One round over the joint: the bolts in their order, and for each what is set, as an index into `settings`; −1: not in this round. */
export interface SimulatedRound {
  readonly turns: readonly (readonly number[])[];
  readonly settings: readonly SimulatedSetting[];
  readonly settingOf: readonly number[];
}

export type SimulatedSetting = TorqueSetting | AngleSetting;

export interface TorqueSetting {
  readonly kind: 'torque';
  readonly tool: number;
  readonly repeatability: number;
  /** mean preload it leaves, N, and torque over preload, mm */
  readonly level: number;
  readonly arm: number;
  /** mean preloads of the settings beside it on the chart, N: what a hand may set by mistake */
  readonly beside: readonly number[];
}

/** Turned on by an angle; the tolerance is drawn evenly. */
export interface AngleSetting {
  readonly kind: 'angle';
  /** torque over preload, mm */
  readonly arm: number;
  readonly angle: number;
  readonly minus: number;
  readonly plus: number;
}
