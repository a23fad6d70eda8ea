import { addDays, type CivilDate, type Plan } from '@clampwright/core';
import { label } from '@clampwright/words';
import ical, { ICalCalendarMethod, ICalEventTransparency } from 'ical-generator';

/** A day on which something falls due. */
export interface DueDay {
  /** the same for the same thing, so that a calendar that reads the file again moves it instead of adding one */
  readonly id: string;
  readonly on: CivilDate;
  readonly title: string;
  readonly text: string;
}

/** Days of a plan: the work itself, and when the calibration of each tool runs out. */
export const planDays = (plan: Plan): DueDay[] => [
  {
    id: `work-${plan.job.workDate}`,
    on: plan.job.workDate,
    title: label('due.work', { job: plan.job.title }),
    text: label('job.sums', { joints: plan.sums.joints, bolts: plan.sums.bolts }),
  },
  ...plan.tools.map(({ serial, name, certificate, due }) => ({
    id: `tool-${serial}`,
    on: due,
    title: label('due.tool', { tool: serial }),
    text: label('due.tool-text', { name, certificate }),
  })),
];

/** Days of joints that fall due for retightening. */
export const dutyDays = (duties: readonly { readonly tag: string; readonly due: CivilDate; readonly bolts: number }[]): DueDay[] =>
  duties.map(({ tag, due, bolts }) => ({
    id: `joint-${tag}`,
    on: due,
    title: label('due.joint', { tag }),
    text: label('due.joint-text', { bolts }),
  }));

/** An iCalendar file (RFC 5545): each day an all-day event that blocks nobody's time, with a reminder a week before. */
export function dueCalendar(name: string, days: readonly DueDay[], made: Date): string {
  const calendar = ical({ name, prodId: '//clampwright-papers//due dates//EN', method: ICalCalendarMethod.PUBLISH });
  for (const { id, on, title, text } of days)
    calendar
      .createEvent({
        id: `${encodeURIComponent(id)}@clampwright`,
        start: new Date(`${on}T00:00:00.000Z`),
        end: new Date(`${addDays(on, 1)}T00:00:00.000Z`),
        timezone: 'UTC',
        allDay: true,
        stamp: made,
        summary: title,
        description: text,
        transparency: ICalEventTransparency.TRANSPARENT,
      })
      .createAlarm({ type: 'display' as never, trigger: 7 * 24 * 3600, description: title });
  return calendar.toString();
}
