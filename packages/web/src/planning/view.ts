import type { Level, Notice, Plan, Sums, ToolState, Verdict } from '@clampwright/core';

/** What pages show of a plan: small enough to be handed over after every edit. The plan itself stays with the engine. */
export interface PlanView {
  readonly job: Plan['job'] | undefined;
  readonly rows: readonly JointRow[];
  readonly toMend: readonly ToMend[];
  readonly tools: readonly ToolState[];
  readonly sums: Sums | undefined;
  /** of the joints that stop: those that only wait for a paper or a person, and are issued with that hold */
  readonly waiting: number;
  /** what was found while reading, each with its place */
  readonly notices: readonly Notice[];
  /** the joint list as it was understood */
  readonly list: ListHead | undefined;
  /** the mapping file with what was said now, where that was new */
  readonly mapping: string | undefined;
  /** joints whose rounds are not computed yet; 0: all that can be known is known */
  readonly roundsOpen: number;
}

/** One line of the plan: a subgroup of a joint. */
export interface JointRow {
  readonly tag: string;
  readonly title: string;
  readonly verdict: Verdict;
  readonly first: boolean;
  readonly bolts: number;
  readonly fastener: string;
  readonly rule: string;
  readonly lot: string;
  readonly preload: string;
  readonly aim: string;
  readonly setting: string;
  readonly tool: string;
  readonly reasons: number;
  /** rounds where bolts act on each other, beside custom */
  readonly rounds?: { readonly ours: number; readonly custom: number };
}

/** One thing to mend, with every way it was met and all joints it would help. */
export interface ToMend {
  readonly key: string;
  readonly level: Level;
  /** each way it was met once; all have one remedy */
  readonly notices: readonly Notice[];
  readonly tags: readonly string[];
}

/** The headings of the joint list, in their order. */
export interface ListHead {
  readonly file: string;
  /** record of the headings, from 1 */
  readonly row: number;
  readonly columns: readonly { readonly heading: string; readonly field?: string; readonly says?: string }[];
}

/** Another tool or method by which joints would no longer stop: found by planning them so. */
export type Way = (
  | { readonly kind: 'tool'; readonly serial: string }
  | { readonly kind: 'rule'; readonly rule: string; readonly title: string }
) & {
  /** joints that were tried and are helped */
  readonly tags: readonly string[];
  /** every joint that was tried is helped */
  readonly all: boolean;
};

/** One difference between two plans. */
export interface JointChange {
  readonly tag: string;
  readonly kind: 'new' | 'gone' | 'changed';
  readonly before?: Verdict;
  readonly after?: Verdict;
  readonly lines: readonly { readonly what: Compared; readonly before: string; readonly after: string }[];
}
export type Compared = 'verdict' | 'rule' | 'bolts' | 'preload' | 'steps' | 'tool' | 'sequence' | 'rounds' | 'minutes';
