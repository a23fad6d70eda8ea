import { type Notice, notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import type { Inspection } from './how-inspected.ts';

const HOUR = 3_600_000;

/** When an inspection may be made: moments in milliseconds since 1970, so that zones and clock changes move nothing. */
export interface InspectionTime {
  readonly state: 'too early' | 'now' | 'too late';
  readonly from: number;
  /** absent where there is no end */
  readonly until?: number;
  readonly notices: readonly Notice[];
}

/**
 * Whether an inspection may be made now: counted from the last bolt of the group. Both ends of the window belong to it; without a window
 * any time after the last bolt will do. Refuses moments that are none.
 *
 * Source: the window of {@link howInspected}: EN 1090-2:2018 12.5.2.4 (12 h to 72 h), four hours for gasketed flanges.
 *
 * @example
 * const finished = Date.parse('2026-10-24T20:00:00+02:00');
 * const look = (at) => inspectionTime(howInspected('en1090-torque'), finished, Date.parse(at)).value.state;
 * expect(look('2026-10-25T06:59:00+01:00')).toBe('too early');
 * expect(look('2026-10-25T07:00:00+01:00')).toBe('now');
 * expect(look('2026-10-27T19:01:00+01:00')).toBe('too late');
 */
export function inspectionTime({ window }: Pick<Inspection, 'window'>, finished: number, now: number): Outcome<InspectionTime> {
  if (!Number.isFinite(finished) || !Number.isFinite(now)) return refused(notice('moment-unreadable', {}));
  const from = finished + (window?.from ?? 0) * HOUR;
  const end = window?.until === undefined ? undefined : finished + window.until * HOUR;
  const state = now < from ? 'too early' : end !== undefined && now > end ? 'too late' : 'now';
  const hours = Math.floor((now - finished) / HOUR);
  const notices: Notice[] = [];
  if (state === 'too early') notices.push(notice('inspection-too-early', { hours, from: window?.from ?? 0 }));
  if (state === 'too late') notices.push(notice('inspection-too-late', { hours, until: window?.until ?? 0 }));
  return done({ state, from, ...(end === undefined ? {} : { until: end }), notices });
}

/** A gasketed flange on its way to pressure. */
export interface RecheckedFlange {
  readonly joint: string;
  /** last bolt of the last pass, and of the re-check, where it was made; milliseconds since 1970 */
  readonly finished: number;
  readonly rechecked?: number;
}

/**
 * Whether a gasketed flange may get pressure: only after a re-check that was made when the gasket had settled for its hours.
 *
 * @example
 * const hours = (count) => count * 3_600_000;
 * expect(beforePressure({ joint: 'F1', finished: 0 }, howInspected('flange-bolt-stress'))[0].code).toBe('recheck-open');
 * expect(beforePressure({ joint: 'F1', finished: 0, rechecked: hours(3) }, howInspected('flange-bolt-stress'))[0].code).toBe('recheck-too-early');
 * expect(beforePressure({ joint: 'F1', finished: 0, rechecked: hours(4) }, howInspected('flange-bolt-stress'))).toEqual([]);
 */
export function beforePressure({ joint, finished, rechecked }: RecheckedFlange, { window }: Pick<Inspection, 'window'>): Notice[] {
  const hours = window?.from ?? 0;
  if (rechecked === undefined) return [notice('recheck-open', { joint, hours })];
  return rechecked - finished >= hours * HOUR ? [] : [notice('recheck-too-early', { joint, hours })];
}
