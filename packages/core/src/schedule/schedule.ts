import type { JointCompliance } from '../interaction/joint-compliance.ts';
import type { JointState } from '../interaction/joint-state.ts';
import { pull, type Turn } from '../interaction/play.ts';
import { type Evenness, evenness } from './evenness.ts';

/** A setting of the tool's chart as the force it leaves in a bolt, by its own index in the chart. */
export interface Level {
  readonly setting: number;
  readonly force: number;
}

/** Ways to go over a joint: its own sequence (star, outwards), or bolt after bolt by number; from bolt 1 or from the opposite side. */
export const ROUND_ORDERS = [
  'in sequence',
  'in sequence backwards',
  'round',
  'round backwards',
  'round from opposite',
  'round backwards from opposite',
] as const;
export type RoundOrder = (typeof ROUND_ORDERS)[number];

/** One round over the joint: the way, and the level of each bolt. */
export interface SchedulePass {
  readonly way: RoundOrder;
  readonly level: readonly Level[];
}

/** A pass and how it leaves the joint. */
export interface PlayedPass extends SchedulePass, Evenness {
  readonly force: readonly number[];
  /** pulls in which the nut moved */
  readonly pulls: number;
  /** changes of setting from one pull to the next */
  readonly changes: number;
  /** ∫F du over the nuts that moved, N·mm: times 2π·arm/pitch it is the work of the tool */
  readonly work: number;
  /** greatest force any bolt had on the way */
  readonly peak: number;
}

/** What every schedule of one joint is made for. */
export interface ScheduleTask {
  readonly compliance: JointCompliance;
  /** what a gasket does not give back, mm/N; see looseJoint */
  readonly gasketSet?: number;
  /** force every bolt should end with */
  readonly target: number;
  /** the joint's own sequence: star of a ring, a group's from the stiffest part outwards */
  readonly star: readonly Turn[];
  readonly circular: readonly Turn[];
}

/** The turns of a way over the joint. */
export function turnsOf({ star, circular }: Pick<ScheduleTask, 'star' | 'circular'>, way: RoundOrder): readonly Turn[] {
  if (way.startsWith('in sequence')) return way === 'in sequence' ? star : [...star].reverse();
  const half = way.endsWith('opposite') ? Math.floor(circular.length / 2) : 0;
  const from = [...circular.slice(half), ...circular.slice(0, half)];
  return way.startsWith('round backwards') ? from.reverse() : from;
}

const boltsOf = (turn: Turn): readonly number[] => (typeof turn === 'number' ? [turn] : turn);

/** Plays one pass with a real wrench, which only tightens; synchronous tools share a setting. Changes the state. */
export function playPass(state: JointState, task: ScheduleTask, pass: SchedulePass, turns = turnsOf(task, pass.way)): PlayedPass {
  let [pulls, changes, work, peak] = [0, 0, 0, 0];
  let setting: number | undefined;
  for (const turn of turns) {
    const bolts = boltsOf(turn);
    const { setting: wanted } = pass.level[bolts[0]!]!;
    if (setting !== undefined && wanted !== setting) changes += 1;
    setting = wanted;
    for (let round = 0; round < (bolts.length === 1 ? 1 : SYNCHRONOUS); round += 1) {
      let moved = false;
      for (const bolt of bolts) {
        const { force } = pass.level[bolt]!;
        const before = state.force[bolt]!;
        if (before >= force * (1 - SETTLED)) continue;
        const stood = state.holds[bolt] ? state.advance[bolt]! : 0;
        pull(state, bolt, force, 'tighten only');
        work += ((before + force) / 2) * Math.max(0, state.advance[bolt]! - stood);
        if (round === 0) pulls += 1;
        moved = true;
      }
      if (!moved) break;
    }
    for (let i = 0; i < state.force.length; i += 1) if (state.force[i]! > peak) peak = state.force[i]!;
  }
  return { ...pass, ...evenness(state.force, task.target), force: [...state.force], pulls, changes, work, peak };
}
/** Synchronous tools work against each other; so many rounds bring them to rest. */
const SYNCHRONOUS = 40;
const SETTLED = 1e-9;
