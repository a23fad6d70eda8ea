import studentQuantile from '@stdlib/stats-base-dists-t-quantile';
import { sampleDeviation, sampleMean } from '../scatter/sample.ts';
import { type Pace, USUAL_PACE } from './pace.ts';

/** Bolts told at one time by one device. */
export interface ToldPulls {
  readonly device: string;
  /** epoch milliseconds, on the device's clock */
  readonly at: number;
  readonly bolts: number;
}

/** What is left, in minutes of one crew; shared among crews that work side by side. */
export interface WorkForecast {
  /** minutes a bolt in a step takes, ways and changes included */
  readonly each: number;
  readonly likely: number;
  /** holds the rest with 90 %, where the log has said enough */
  readonly bounds?: { readonly low: number; readonly high: number };
  /** what it was learnt from; `usual`: the log says too little, an own estimate stands in */
  readonly basis: { readonly kind: 'log'; readonly bolts: number; readonly minutes: number } | { readonly kind: 'usual' };
}

/** A longer silence is a break, not work. Own choice, no source. */
export const BREAK_MINUTES = 30;
/** Bolts of a block: pace is compared block by block, for one bolt says little. Own choice. */
const BLOCK = 10;
const LEAST_BLOCKS = 3;

/**
 * Minutes of work left, from the times at which a crew told its bolts. Silences up to {@link BREAK_MINUTES} are work. The bolts of each device
 * are taken in blocks of ten; the rest is so many blocks more of the same kind:
 *
 *     m·x̄ ± t_{0.95, n−1}·s·m·√(1/n + 1/m)
 *
 * x̄ and s: minutes of a block, n blocks seen, m to come. Fewer than three blocks say too little: then the usual pace, without bounds.
 *
 * Source: prediction interval for the mean of m further values, Hahn & Meeker, Statistical Intervals (1991), 4.8.
 *
 * @example
 * const told = Array.from({ length: 41 }, (_, at) => ({ device: 'd', at: at * 60_000, bolts: 1 }));
 * const { each, likely, bounds } = forecastWork(told, 25);
 * expect([each, likely, bounds.low, bounds.high]).toEqual([1, 25, 25, 25]);
 */
export function forecastWork(told: readonly ToldPulls[], left: number, pace: Pace = USUAL_PACE): WorkForecast {
  const devices = [...new Set(told.map(({ device }) => device))];
  const blocks = devices.flatMap((device) => blocksOf(told.filter((one) => one.device === device)));
  if (blocks.length < LEAST_BLOCKS) {
    const each = pace.place + pace.turning;
    return { each, likely: left * each, basis: { kind: 'usual' } };
  }
  const bolts = blocks.reduce((sum, one) => sum + one.bolts, 0);
  const minutes = blocks.reduce((sum, one) => sum + one.minutes, 0);
  const each = minutes / bolts;
  const basis = { kind: 'log', bolts, minutes } as const;
  if (left === 0) return { each, likely: 0, bounds: { low: 0, high: 0 }, basis };
  const paces = blocks.map((one) => (BLOCK * one.minutes) / one.bolts);
  const [n, m] = [blocks.length, left / BLOCK];
  const margin = studentQuantile(0.95, n - 1) * sampleDeviation(paces) * m * Math.sqrt(1 / n + 1 / m);
  const middle = m * sampleMean(paces);
  return { each, likely: left * each, bounds: { low: Math.max(0, middle - margin), high: middle + margin }, basis };
}

/** The work of one device in blocks of about ten bolts; what is left over at the end waits for more. */
function blocksOf(told: readonly ToldPulls[]): { readonly bolts: number; readonly minutes: number }[] {
  const inOrder = [...told].sort((a, b) => a.at - b.at);
  const blocks: { bolts: number; minutes: number }[] = [];
  let block = { bolts: 0, minutes: 0 };
  for (let i = 1; i < inOrder.length; i += 1) {
    const minutes = (inOrder[i]!.at - inOrder[i - 1]!.at) / 60_000;
    if (minutes > BREAK_MINUTES) continue;
    block.bolts += inOrder[i]!.bolts;
    block.minutes += minutes;
    if (block.bolts < BLOCK) continue;
    blocks.push(block);
    block = { bolts: 0, minutes: 0 };
  }
  return blocks;
}
