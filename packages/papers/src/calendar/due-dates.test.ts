import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { testPlan } from '../test-plan.ts';
import { dueCalendar, dutyDays, planDays } from './due-dates.ts';

const MADE = new Date('2026-11-26T08:00:00Z');
const plan = testPlan();

/** Events as another library reads them. */
const eventsOf = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((one) => {
    const event = new ICAL.Event(one);
    return {
      uid: event.uid,
      summary: event.summary,
      start: event.startDate.toString(),
      end: event.endDate.toString(),
      allDay: event.startDate.isDate,
      alarms: one.getAllSubcomponents('valarm').map((alarm) => String(alarm.getFirstPropertyValue('trigger'))),
    };
  });

test('every tool falls due on the day its certificate says, all day, with a week’s warning', () => {
  const events = eventsOf(dueCalendar(plan.job.title, planDays(plan), MADE));
  expect(events).toHaveLength(plan.tools.length + 1);
  for (const { serial, due } of plan.tools)
    expect(events).toContainEqual(
      expect.objectContaining({
        summary: `Calibration of ${serial} due`,
        start: due,
        allDay: true,
        alarms: ['-P7D'],
        uid: `tool-${serial}@clampwright`,
      }),
    );
});

test('a day ends where the next begins, also over the end of a month and of a year', () => {
  const days = ['2026-12-31', '2028-02-28'].map((due, at) => ({ tag: `J${at}`, due: due as never, bolts: 4 }));
  expect(eventsOf(dueCalendar('x', dutyDays(days), MADE)).map(({ start, end }) => [start, end])).toEqual([
    ['2026-12-31', '2027-01-01'],
    ['2028-02-28', '2028-02-29'],
  ]);
});

test('texts with commas, semicolons and line ends come back as they were, and no line is longer than 75 octets', () => {
  const title = `Pump, house; “spool” \\ one\nand more: ${'Ω'.repeat(60)}`;
  const text = dueCalendar('x', [{ id: 'a b', on: '2026-12-04' as never, title, text: '' }], MADE);
  expect(eventsOf(text)[0]!.summary).toBe(title);
  for (const line of text.split('\r\n')) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
});

test('the same days give the same file', () => {
  expect(dueCalendar('x', planDays(plan), MADE)).toBe(dueCalendar('x', planDays(plan), MADE));
});
