import type { Hash } from '../bytes/hash.ts';
import type { CardWithdrawn } from '../entry/kinds/card-withdrawn.ts';
import type { SwappedSetting } from '../entry/kinds/tool-swapped.ts';
import type { Mention } from './draft.ts';
import type { Found } from './found.ts';
import type { Slice } from './slice.ts';

/** One time a bolt was tightened in a step. */
export interface Tightened extends Mention {
  readonly tool?: string;
  readonly setting?: string;
  readonly end: string;
  readonly angleMilliDegree?: number;
  /** told for several bolts at once */
  readonly batch: boolean;
}

export interface BoltDraft {
  readonly position: number;
  /** by step, as often as told; a second one is a contradiction, and kept */
  steps: Record<string, Tightened[]>;
  /** how often it was replaced; what came before no longer counts */
  replaced: number;
  loosened: boolean;
  trouble: { readonly mention: Mention; readonly what: string }[];
  inspections: { readonly mention: Mention; readonly passed: boolean; readonly angleMilliDegree?: number }[];
}

export interface Progress {
  /** bolts the step has not reached yet */
  readonly open: Set<number>;
  /** first line of the sequence that still has an open bolt */
  front: number;
}

export interface JointDraft {
  readonly joint: string;
  tag?: string;
  plan?: { readonly number: string; readonly plan: Hash; readonly slice: Slice; readonly lineOf: ReadonlyMap<number, number> };
  /** a later plan, which does not carry it */
  takenOff?: { readonly number: string; readonly reason: CardWithdrawn['reason'] };
  /** the card that an earlier issue had for it */
  cardBefore?: Hash;
  datum?: Mention & { readonly agrees: boolean };
  assembly?: Mention & { readonly passed: boolean };
  snug?: Mention & { readonly passed: boolean };
  gaps: { readonly mention: Mention; readonly at: number; readonly gapMicrometre: number }[];
  bolts: Map<number, BoltDraft>;
  /** how far each step has come: what sequence is judged by */
  progress: Map<string, Progress>;
  cutOuts: { readonly mention: Mention; readonly tool: string; readonly cause: string; readonly bolt?: number }[];
  swaps: {
    readonly mention: Mention;
    readonly from: string;
    readonly to: string;
    readonly settings: readonly SwappedSetting[];
  }[];
  /** where it is a gate valve */
  valve?: { readonly number: string; readonly card: Hash };
  released: { readonly mention: Mention; readonly point: 'hold' | 'witness' | 'review'; readonly name: string; readonly seen?: string }[];
  valves: { readonly mention: Mention; readonly turnsThousandth: number; readonly direction: 'open' | 'close' }[];
  signatures: { readonly mention: Mention; readonly as: string }[];
  retightening: { readonly mention: Mention; readonly due?: string; readonly done?: true }[];
  nonconformances: string[];
  found: Found[];
  history: Hash[];
}

export const startJoint = (joint: string): JointDraft => ({
  joint,
  gaps: [],
  bolts: new Map(),
  progress: new Map(),
  cutOuts: [],
  swaps: [],
  released: [],
  valves: [],
  signatures: [],
  retightening: [],
  nonconformances: [],
  found: [],
  history: [],
});

export function boltOf(joint: JointDraft, position: number): BoltDraft {
  const known = joint.bolts.get(position);
  if (known) return known;
  const bolt: BoltDraft = { position, steps: {}, replaced: 0, loosened: false, trouble: [], inspections: [] };
  joint.bolts.set(position, bolt);
  return bolt;
}
