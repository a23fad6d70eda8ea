import { type Pace, USUAL_PACE } from './pace.ts';

/** What is done at one joint. */
export interface JointWork {
  readonly tag: string;
  readonly pulls: number;
  readonly tried: number;
  readonly changes: number;
  readonly marks: number;
  readonly batteries: number;
  /** turns of a pull, and turns a minute of the tool under load */
  readonly turnsEach: number;
  readonly toolSpeed: number;
}

/**
 * Minutes at one joint: pulls·(placing + turns/speed) + tries + changes + marks + batteries.
 *
 * A tool speed of zero: not known.
 *
 * @example
 * const work = { tag: 'J1', pulls: 16, tried: 0, changes: 2, marks: 8, batteries: 0, turnsEach: 0.5, toolSpeed: 5 };
 * expect(jointMinutes(work)).toBeCloseTo(16 * (0.45 + 0.1) + 0.6 + 0.8, 9);
 */
export function jointMinutes(
  { pulls, tried, changes, marks, batteries, turnsEach, toolSpeed }: JointWork,
  pace: Pace = USUAL_PACE,
): number {
  const turning = toolSpeed > 0 ? turnsEach / toolSpeed : pace.turning;
  return pulls * (pace.place + turning) + tried * pace.tried + changes * pace.change + marks * pace.mark + batteries * pace.battery;
}

/** Joints given to one crew, in the order it takes them. */
export interface CrewDay {
  readonly crew: number;
  readonly joints: readonly string[];
  readonly minutes: number;
  readonly shifts: number;
}

/**
 * Joints shared out among crews: the longest joint goes to the crew that is free first, and within a crew joints keep their given order.
 * Greedy; at worst a third over the best (Graham, SIAM J. Appl. Math. 17 (1969) 416).
 *
 * @example
 * const days = shareOut([{ tag: 'A', minutes: 60 }, { tag: 'B', minutes: 50 }, { tag: 'C', minutes: 40 }], 2, 480);
 * expect(days.map(({ joints }) => joints)).toEqual([['A'], ['B', 'C']]);
 */
export function shareOut(
  joints: readonly { readonly tag: string; readonly minutes: number }[],
  crews: number,
  shiftMinutes: number,
  pace: Pace = USUAL_PACE,
): CrewDay[] {
  const given = Array.from({ length: Math.max(1, Math.floor(crews)) }, () => ({ tags: new Set<string>(), minutes: 0 }));
  for (const { tag, minutes } of [...joints].sort((a, b) => b.minutes - a.minutes)) {
    const free = given.reduce((least, one) => (one.minutes < least.minutes ? one : least));
    free.minutes += minutes + (free.tags.size > 0 ? pace.move : 0);
    free.tags.add(tag);
  }
  return given.map(({ tags, minutes }, at) => ({
    crew: at + 1,
    joints: joints.filter(({ tag }) => tags.has(tag)).map(({ tag }) => tag),
    minutes,
    shifts: shiftMinutes > 0 ? minutes / shiftMinutes : 0,
  }));
}

/** Hours between the first and the second step of a two-step method within which both are done, where nobody says otherwise. Common practice, no source. */
export const TWO_STEP_HOURS = 24;

/** May the second step follow the first, or has the lubricant waited too long? Times as epoch milliseconds: a clock change moves nothing. */
export const secondStepInTime = (first: number, second: number, hours = TWO_STEP_HOURS): boolean =>
  second >= first && second - first <= hours * 3_600_000;
