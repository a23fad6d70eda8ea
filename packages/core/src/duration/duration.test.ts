import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, addMonths, type CivilDate, civilDate, daysBetween } from '../date.ts';
import { duties, firstRetightening, YEARLY_SAMPLE } from '../retightening/due.ts';
import { secondStepInTime, shareOut } from './joint-time.ts';

const RUNS = { seed: 20261127, numRuns: 500 };
const day = (text: string) => civilDate(text) as CivilDate;

describe('crews', () => {
  const lists = fc.uniqueArray(fc.record({ tag: fc.string({ minLength: 1, maxLength: 5 }), minutes: fc.integer({ min: 1, max: 600 }) }), {
    selector: ({ tag }) => tag,
    maxLength: 30,
  });
  test('every joint is given to one crew, in its order', () => {
    fc.assert(
      fc.property(lists, fc.integer({ min: 1, max: 5 }), (joints, crews) => {
        const days = shareOut(joints, crews, 480);
        expect(days.flatMap((one) => one.joints).sort()).toEqual(joints.map(({ tag }) => tag).sort());
        const place = new Map(joints.map(({ tag }, at) => [tag, at]));
        for (const { joints: own } of days)
          for (let i = 1; i < own.length; i += 1) expect(place.get(own[i]!)!).toBeGreaterThan(place.get(own[i - 1]!)!);
      }),
      RUNS,
    );
  });
});

/** A clock that is put back or forward moves nothing: times are counted from the epoch. */
test('the time between two steps is counted through a change of the clock', () => {
  const first = Date.parse('2026-10-24T20:00:00+02:00');
  const second = Date.parse('2026-10-25T18:59:00+01:00');
  expect(secondStepInTime(first, second)).toBe(true);
  expect(secondStepInTime(first, Date.parse('2026-10-25T19:01:00+01:00'))).toBe(false);
  expect(secondStepInTime(second, first)).toBe(false);
});

/** Against the calendar of the language, which nobody here wrote. */
test('days and months of the calendar', () => {
  fc.assert(
    fc.property(
      fc.date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true }),
      fc.integer({ min: -900, max: 900 }),
      (date, days) => {
        const from = day(date.toISOString().slice(0, 10));
        const to = new Date(Date.parse(`${from}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
        expect(addDays(from, days)).toBe(to);
        expect(daysBetween(from, addDays(from, days))).toBe(days);
      },
    ),
    RUNS,
  );
  expect(addMonths(day('2024-01-31'), 1)).toBe('2024-02-29');
  expect(addMonths(day('2026-03-31'), -1)).toBe('2026-02-28');
});

describe('what falls due', () => {
  const joints = [
    { tag: 'T2', bolts: 144, finished: day('2025-06-30') },
    { tag: 'T1', bolts: 96, finished: day('2026-03-02'), lastLookedAt: day('2026-08-31') },
    { tag: 'T3', bolts: 72, finished: day('2026-01-10'), lastLookedAt: day('2026-11-20'), foundLoose: 1 },
  ];
  test('earliest first, a tenth of the bolts, all of them where one was loose', () => {
    expect(duties(joints, YEARLY_SAMPLE, day('2026-11-25'))).toEqual([
      { tag: 'T2', due: '2026-06-30', bolts: 15, overdue: true },
      { tag: 'T3', due: '2026-11-20', bolts: 72, overdue: true },
      { tag: 'T1', due: '2027-08-31', bolts: 10, overdue: false },
    ]);
  });
  test('the run-in ends on the last day of the six months, or after it', () => {
    expect(firstRetightening(day('2026-03-02'), day('2026-09-02'))).toEqual({ from: '2026-09-02', until: '2026-09-02' });
    expect(firstRetightening(day('2026-03-02'), day('2026-09-03'))).toBe('late');
  });
});
