import { type Chance, chanceOf } from './chance.ts';
import { quantile } from './histogram.ts';
import type { SimulationTask } from './simulate.ts';
import type { SimulatedJob } from './simulated-job.ts';
import type { JointTally, Tally } from './tally.ts';

/** What so many runs of a job say. Plain data, the same bytes for the same job, seed and runs. */
export interface SimulationResult {
  readonly format: 'clampwright-simulation';
  readonly version: 1;
  readonly engine: string;
  readonly asked: SimulationTask;
  /** runs played: fewer than asked where someone stopped it */
  readonly runs: number;
  /** chance that any bolt of the job lies outside its window */
  readonly outside: Chance;
  readonly minutes: number;
  readonly energy: number;
  readonly pulls: number;
  readonly joints: readonly SimulatedOutcome[];
  readonly notSimulated: readonly NotSimulated[];
}

export interface NotSimulated {
  readonly tag: string;
  readonly why: 'stops' | 'no set torque' | 'rotation unknown';
}

export interface SimulatedOutcome {
  readonly tag: string;
  readonly bolts: number;
  /** are the bolts played as acting on each other? */
  readonly interaction: boolean;
  /** chance that a bolt of the joint lies outside its window; share of those runs in which a mistake was made */
  readonly outside: Chance;
  readonly byMistake: number;
  /** the same after embedding */
  readonly outsideEmbedded: Chance;
  /** share of all bolts below and above */
  readonly low: number;
  readonly high: number;
  /** lowest and highest bolt of a run over target: 5 %, median, 95 % of runs; the counts by half a per cent from `from` */
  readonly lowest: Distribution;
  readonly highest: Distribution;
  readonly lowestEmbedded: Distribution;
  /** means of a run */
  readonly minutes: number;
  readonly energy: number;
  readonly pulls: number;
}

export interface Distribution {
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
  /** first bin with a count, in half per cents of the target, and the counts from there on */
  readonly from: number;
  readonly counts: readonly number[];
}

/** What a tally says, in figures people ask for. */
export function simulationResult(
  engine: string,
  job: SimulatedJob,
  notSimulated: readonly NotSimulated[],
  asked: SimulationTask,
  tally: Tally,
): SimulationResult {
  const { runs } = tally;
  const mean = (key: 'minutes' | 'energy' | 'pulls') => tally.joints.reduce((sum, joint) => sum + joint[key], 0) / Math.max(1, runs);
  return {
    format: 'clampwright-simulation',
    version: 1,
    engine,
    asked,
    runs,
    outside: chanceOf(tally.outside, runs),
    minutes: mean('minutes'),
    energy: mean('energy'),
    pulls: mean('pulls'),
    joints: job.joints.map(({ tag, parts, members }, at) => ({
      tag,
      bolts: parts.reduce((sum, { bolts }) => sum + bolts.length, 0),
      interaction: members !== undefined,
      ...outcomeOf(
        tally.joints[at]!,
        runs,
        parts.reduce((sum, { bolts }) => sum + bolts.length, 0),
      ),
    })),
    notSimulated,
  };
}

function outcomeOf(joint: JointTally, runs: number, bolts: number): Omit<SimulatedOutcome, 'tag' | 'bolts' | 'interaction'> {
  const each = Math.max(1, runs);
  return {
    outside: chanceOf(joint.outside, runs),
    byMistake: joint.outside > 0 ? joint.outsideByMistake / joint.outside : 0,
    outsideEmbedded: chanceOf(joint.outsideEmbedded, runs),
    low: joint.low / (each * bolts),
    high: joint.high / (each * bolts),
    lowest: distribution(joint.lowest),
    highest: distribution(joint.highest),
    lowestEmbedded: distribution(joint.lowestEmbedded),
    minutes: joint.minutes / each,
    energy: joint.energy / each,
    pulls: joint.pulls / each,
  };
}

function distribution(bins: Uint32Array): Distribution {
  const from = Math.max(
    0,
    bins.findIndex((one) => one > 0),
  );
  const to = bins.findLastIndex((one) => one > 0);
  return {
    p5: quantile(bins, 0.05),
    p50: quantile(bins, 0.5),
    p95: quantile(bins, 0.95),
    from,
    counts: Array.from(bins.subarray(from, to + 1)),
  };
}
