import { addMonths, type CivilDate, daysBetween } from '../date.ts';
import type { Source } from '../source.ts';

/** When a joint may be, and must have been, tightened again. */
export interface DueWindow {
  readonly from: CivilDate;
  readonly until: CivilDate;
}

/** First retightening of a tower: not before the run-in, not after so many months. */
const FIRST = { hours: 500, months: 6 } as const;
export const FIRST_RETIGHTENING_HOURS = FIRST.hours;
export const RETIGHTENING_SOURCE: Source = {
  standard: 'tower practice',
  clause: 'after some 500 h, within 6 months; no clause verified',
  provenance: 'common-practice',
};

/** A 750 kW tower top lost this share of bolt force in 500 h after its bolts were changed. Source: J. Japan Wind Energy Assoc. 40(2) A_13. */
export const TOWER_TOP_LOSS = 0.2;

/**
 * Window of the first retightening of a tower flange: from the day 500 operating hours are reached to six months after erection.
 * `late`: the hours are reached only after the six months; the engineer decides.
 *
 * Common practice, no clause verified.
 *
 * @example
 * expect(firstRetightening('2026-03-02', '2026-04-20')).toEqual({ from: '2026-04-20', until: '2026-09-02' });
 * expect(firstRetightening('2026-01-10', '2026-08-01')).toBe('late');
 */
export function firstRetightening(erected: CivilDate, runIn: CivilDate): DueWindow | 'late' {
  const until = addMonths(erected, FIRST.months);
  return daysBetween(runIn, until) < 0 ? 'late' : { from: runIn, until };
}

/** How a maintenance rule says when, and how many. */
export interface MaintenanceRule {
  /** months from the day the joint was finished, or last looked at */
  readonly everyMonths: number;
  /** share of the bolts that is tried; all of them where one is found loose */
  readonly share: number;
  readonly source: Source;
}

/** Ten per cent a year, all of them if one is loose. */
export const YEARLY_SAMPLE: MaintenanceRule = {
  everyMonths: 12,
  share: 0.1,
  source: { standard: 'tower maintenance practice', provenance: 'common-practice' },
};

/**
 * Bolts of a sample, rounded up to whole ones.
 *
 * @example
 * expect(sampleOf(144, 0.1)).toBe(15);
 * expect(sampleOf(7, 0.1, 2)).toBe(2);
 */
export const sampleOf = (bolts: number, share: number, least = 1): number =>
  Math.min(bolts, Math.max(least, Math.ceil(share * bolts - 1e-9)));

/** A joint as its log leaves it. */
export interface FinishedJoint {
  readonly tag: string;
  readonly bolts: number;
  readonly finished: CivilDate;
  readonly lastLookedAt?: CivilDate;
  /** bolts that the last sample found loose */
  readonly foundLoose?: number;
}

/** What is due, and by when. */
export interface Due {
  readonly tag: string;
  readonly due: CivilDate;
  readonly bolts: number;
  readonly overdue: boolean;
}

/**
 * What falls due, earliest first, from how the joints were left. A sample that found a loose bolt makes all bolts of that joint due at once.
 *
 * @example
 * const rule = { everyMonths: 12, share: 0.1, source: { standard: 'maintenance manual', provenance: 'engineer' } };
 * const [due] = duties([{ tag: 'T1', bolts: 144, finished: '2026-03-02' }], rule, '2026-11-25');
 * expect(due).toEqual({ tag: 'T1', due: '2027-03-02', bolts: 15, overdue: false });
 */
export function duties(joints: readonly FinishedJoint[], rule: MaintenanceRule, today: CivilDate): Due[] {
  return joints
    .map(({ tag, bolts, finished, lastLookedAt, foundLoose = 0 }): Due => {
      const since = lastLookedAt ?? finished;
      const due = foundLoose > 0 ? since : addMonths(since, rule.everyMonths);
      return { tag, due, bolts: foundLoose > 0 ? bolts : sampleOf(bolts, rule.share), overdue: daysBetween(due, today) > 0 };
    })
    .sort((a, b) => (a.due < b.due ? -1 : a.due > b.due ? 1 : a.tag < b.tag ? -1 : 1));
}
