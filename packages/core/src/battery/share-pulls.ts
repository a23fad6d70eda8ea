import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { beliefNotices, type DrawBelief, doneWith, type EnergyLeft, pullsLasting, STOP_CONFIDENCE } from './remaining.ts';

/** One pull of the tool, in the order of the work. */
export interface Pull {
  readonly joint: string;
  readonly bolt: number;
  readonly step: string;
  /** its draw as a multiple of the believed one: 1 for a plain bolt of the job */
  readonly weight: number;
}

/** A battery at hand: what may be left in it, and what it holds when full, J. */
export interface BatteryAtHand extends EnergyLeft {
  readonly serial: string;
  readonly full: number;
}

/** The pulls a battery is trusted with, before it is changed. */
export interface BatteryTurn {
  readonly serial: string;
  readonly pulls: readonly Pull[];
  /** chance that it does them all */
  readonly chance: number;
}

export interface SharedPulls {
  readonly turns: readonly BatteryTurn[];
  /** pulls that no battery at hand is trusted with */
  readonly uncovered: readonly Pull[];
  /** full batteries like the largest at hand that those would still take; infinite where one does not do a single pull */
  readonly more: number;
  /** joints whose steps are not all covered: not to be begun */
  readonly notToBegin: readonly string[];
  readonly notices: readonly Notice[];
}

/** Below so many logged drops the draw is an assumption, and that is said. */
const FEW_DROPS = 3;

/**
 * Shares the pulls of a job among the batteries at hand: the one that surely holds most goes first, each is trusted with the pulls that it
 * does in nine cases of ten, and then it is changed. Whole pulls only: none is begun with one battery and meant to end with another.
 *
 * `drops`: gauge drops the belief rests on. Refuses batteries without an energy, a charge below
 * nothing or above full, and pulls without a draw, all at once.
 *
 * @example
 * const belief = { mean: 1960, meanDeviation: 100, boltDeviation: 150 };
 * const pulls = Array.from({ length: 200 }, (_, i) => ({ joint: 'J1', bolt: i + 1, step: 'second step', weight: 1 }));
 * const shared = sharePulls(pulls, [{ serial: 'P1', low: 291_600, high: 291_600, full: 291_600 }], belief, 4).value;
 * expect(shared.turns[0].pulls.length).toBe(139);
 * expect(shared.more).toBe(1);
 * expect(shared.notToBegin).toEqual(['J1']);
 */
export function sharePulls(
  pulls: readonly Pull[],
  batteries: readonly BatteryAtHand[],
  belief: DrawBelief,
  drops: number,
): Outcome<SharedPulls> {
  const faults = [
    ...batteries.filter(({ full }) => !(full > 0)).map(({ serial }) => notice('battery-rating', { serial })),
    ...batteries.filter((one) => one.full > 0 && !isChargeOf(one)).map(({ serial }) => notice('battery-charge', { serial })),
    ...beliefNotices(belief),
    ...pulls.filter(({ weight }) => !(weight > 0)).map(({ joint, bolt }) => notice('pull-without-draw', { joint, bolt })),
  ];
  if (faults.length > 0) return refused(...faults);
  const trusted = (left: EnergyLeft, from: number) => {
    const chances = pullsLasting(left, belief, weightsFrom(pulls, from));
    const count = doneWith(chances, STOP_CONFIDENCE);
    return { count, chance: chances[count - 1] ?? 0 };
  };
  const turns: BatteryTurn[] = [];
  let at = 0;
  for (const battery of [...batteries].sort((a, b) => b.low - a.low)) {
    const { count, chance } = trusted(battery, at);
    if (count > 0) turns.push({ serial: battery.serial, pulls: pulls.slice(at, at + count), chance });
    at += count;
  }
  const largest = Math.max(0, ...batteries.map(({ full }) => full));
  const more = fullBatteries(pulls.length, at, (from) => trusted({ low: largest, high: largest }, from).count);
  const uncovered = pulls.slice(at);
  const notToBegin = [...new Set(uncovered.map(({ joint }) => joint))];
  return done({ turns, uncovered, more, notToBegin, notices: shareNotices(uncovered.length, more, notToBegin, drops) });
}

/** What may be left lies between nothing and full. */
const isChargeOf = ({ low, high, full }: BatteryAtHand): boolean => low >= 0 && low <= high && high <= full;

function* weightsFrom(pulls: readonly Pull[], from: number): Generator<number> {
  for (let at = from; at < pulls.length; at += 1) yield pulls[at]!.weight;
}

function fullBatteries(count: number, from: number, trusted: (from: number) => number): number {
  let more = 0;
  for (let at = from; at < count; more += 1) {
    const pulls = trusted(at);
    if (pulls === 0) return Number.POSITIVE_INFINITY;
    at += pulls;
  }
  return more;
}

function shareNotices(uncovered: number, more: number, joints: readonly string[], drops: number): Notice[] {
  return [
    ...(uncovered > 0 && more < Number.POSITIVE_INFINITY ? [notice('batteries-too-few', { pulls: uncovered, more })] : []),
    ...(more === Number.POSITIVE_INFINITY ? [notice('batteries-too-weak', {})] : []),
    ...joints.map((joint) => notice('joint-not-covered', { joint })),
    ...(drops < FEW_DROPS ? [notice('draw-assumed', { drops })] : []),
  ];
}

/**
 * The bolts still open, in tightening order: what a crew resumes with. The bolt whose pull broke off comes first.
 *
 * @example
 * expect(resumeList([1, 5, 3, 7, 2], new Set([1, 5]), 7)).toEqual([7, 3, 2]);
 */
export function resumeList(sequence: readonly number[], finished: ReadonlySet<number>, brokenOff?: number): number[] {
  const open = sequence.filter((bolt) => !finished.has(bolt) && bolt !== brokenOff);
  return brokenOff === undefined || finished.has(brokenOff) ? open : [brokenOff, ...open];
}
