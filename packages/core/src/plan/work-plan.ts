import type { StepEnding } from '../battery/supply.ts';
import { tighteningWork, USUAL_DRAW } from '../battery/work.ts';
import { USUAL_PACE } from '../duration/pace.ts';
import { degrees, Nmm, rad } from '../quantity.ts';
import type { Context } from './context.ts';
import type { JointPlan, StepPlan, SubgroupPlan, TighteningPlan } from './plan.ts';
import { threadOf } from './resolve-bolt.ts';

/** Where the work on a joint may rest without harm, by its method. */
export type SafeStop = 'after a whole round' | 'after the first step, before marking' | 'after all bolts are snug';

/** What a joint takes: pulls, minutes, energy. Estimates for planning batteries and shifts. */
export interface WorkPlan {
  readonly pulls: number;
  readonly minutes: number;
  /** work of the tools on the nuts, J */
  readonly energy: number;
  /** what batteries give for it, J; where battery tools do it */
  readonly draw?: number;
  /** the clamped thickness is not known: a ramp of 60° was taken for every bolt */
  readonly assumed: boolean;
  /** whether a bolt may be finished with the next battery, or must not be begun */
  readonly ends: StepEnding;
  readonly safeStop: SafeStop;
}

/** Ramp of a bolt whose rotation nobody can work out. Own estimate. */
const ASSUMED_RAMP = degrees(60);

/** The work on one planned joint; `undefined` where no setting was found. */
export function workPlan(context: Context, subgroups: readonly SubgroupPlan[]): WorkPlan | undefined {
  let [pulls, energy, changes] = [0, 0, 0];
  let [assumed, battery, ends] = [false, true, 'torque' as StepEnding];
  for (const { tightening, positions, size } of subgroups) {
    if (!tightening) return undefined;
    const steps = turned(tightening);
    if (steps.length === 0 || steps.some(({ torque, setting }) => torque && !setting)) return undefined;
    const pitch = threadOf(size)?.pitch ?? 1;
    const each = boltWork(tightening, steps, pitch);
    assumed ||= tightening.resilience === undefined;
    if (steps.some(({ end }) => end.kind === 'mark at angle')) ends = 'angle';
    const kinds = steps.flatMap(({ setting }) => (setting ? [context.toolBySerial.get(setting.tool)?.tool.kind] : []));
    battery &&= kinds.length > 0 && kinds.every((kind) => kind === 'battery');
    pulls += steps.length * positions.length;
    changes = Math.max(changes, steps.length);
    energy += each * positions.length;
  }
  if (pulls === 0) return undefined;
  return {
    pulls,
    minutes: pulls * (USUAL_PACE.place + USUAL_PACE.turning) + changes * USUAL_PACE.change,
    energy,
    ...(battery ? { draw: drawOf(energy, pulls) } : {}),
    assumed,
    ends,
    safeStop: safeStopOf(subgroups[0]!.tightening!),
  };
}

/** Steps in which a tool turns the bolts once: a re-check and further circular rounds come on top. */
const turned = ({ steps }: TighteningPlan): readonly StepPlan[] =>
  steps.filter(({ end }) => end.kind !== 'firm contact' && end.kind !== 'no nut moves');

/** Area under torque over rotation, J: a straight ramp to the last set torque, then, where an angle follows, on to yield and along it. */
function boltWork({ resilience, yieldPreload }: TighteningPlan, steps: readonly StepPlan[], pitch: number): number {
  const last = steps.findLast(({ setting }) => setting)?.setting;
  if (!last) return 0;
  if (resilience === undefined) return ramp(0, last.torque, ASSUMED_RAMP);
  const arm = last.torque / last.preload;
  const perNewton = (2 * Math.PI * resilience) / pitch;
  let [force, work] = [last.preload as number, ramp(0, last.torque, last.preload * perNewton)];
  for (const { end } of steps) {
    if (end.kind !== 'mark at angle') continue;
    const plateau = Math.max(force, yieldPreload?.value ?? Number.POSITIVE_INFINITY);
    const reached = Math.min(plateau, force + end.angle / perNewton);
    const elastic = (reached - force) * perNewton;
    work += ramp(arm * force, arm * reached, elastic) + ramp(arm * reached, arm * reached, end.angle - elastic);
    force = reached;
  }
  return work;
}

const ramp = (from: number, to: number, angle: number): number =>
  tighteningWork({ from: Nmm(from), to: Nmm(to), ramp: rad(angle), freeTurns: 0, running: Nmm(0) });

/** What batteries give for so much work on the nuts in so many pulls, J: each pull has its overhead. */
const drawOf = (energy: number, pulls: number): number => energy / USUAL_DRAW.efficiency + pulls * USUAL_DRAW.overhead;

function safeStopOf({ steps }: TighteningPlan): SafeStop {
  if (steps.some(({ end }) => end.kind === 'mark at angle')) return 'after the first step, before marking';
  return steps.some(({ setting }) => setting) ? 'after a whole round' : 'after all bolts are snug';
}

/** The work of a joint whose rounds are known. */
export const workOfRounds = (work: WorkPlan, { rounds }: NonNullable<JointPlan['interaction']>): WorkPlan => {
  const sum = (of: (round: (typeof rounds)[number]) => number) => rounds.reduce((total, round) => total + of(round), 0);
  const [energy, pulls] = [sum((round) => round.energy), sum((round) => round.pulls)];
  return {
    ...work,
    assumed: false,
    pulls,
    energy,
    minutes: sum(({ minutes }) => minutes),
    ...(work.draw === undefined ? {} : { draw: drawOf(energy, pulls) }),
  };
};
