/** A civil date of the site, `YYYY-MM-DD`: calibration and due dates carry no clock and no zone. Compare with `<`. */
export type CivilDate = string & { readonly civil: true };

const PATTERN = /^(\d{4})-(\d{2})-(\d{2})$/;

/**
 * A civil date, if the text is one that the calendar has.
 *
 * @example
 * expect(civilDate('2026-02-28')).toBe('2026-02-28');
 * expect(civilDate('2026-02-30')).toBe(undefined);
 */
export function civilDate(text: string): CivilDate | undefined {
  const parts = PATTERN.exec(text.trim());
  if (!parts) return undefined;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  if (month < 1 || month > 12 || day < 1 || day > daysIn(year, month)) return undefined;
  return text.trim() as CivilDate;
}

const isLeap = (year: number) => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
const daysIn = (year: number, month: number) =>
  month === 2 && isLeap(year) ? 29 : [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1]!;

/** Days since 1 March of year 0 in the Gregorian calendar: whole months of 153 days per five from March on. */
function dayNumber(date: CivilDate): number {
  const [y, m, d] = date.split('-').map(Number) as [number, number, number];
  const year = m > 2 ? y : y - 1;
  const month = (m + 9) % 12;
  return 365 * year + Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400) + Math.floor((153 * month + 2) / 5) + d;
}

/**
 * Days from one date to another; negative when the second is earlier.
 *
 * @example
 * expect(daysBetween('2026-11-25', '2026-12-25')).toBe(30);
 * expect(daysBetween('2024-02-28', '2024-03-01')).toBe(2);
 */
export const daysBetween = (from: CivilDate, to: CivilDate): number => dayNumber(to) - dayNumber(from);

/**
 * The same day so many months on; the last of the month where it has no such day.
 *
 * @example
 * expect(addMonths('2026-03-02', 6)).toBe('2026-09-02');
 * expect(addMonths('2026-08-31', 6)).toBe('2027-02-28');
 */
export function addMonths(date: CivilDate, months: number): CivilDate {
  const [y, m, d] = date.split('-').map(Number) as [number, number, number];
  const whole = y * 12 + (m - 1) + months;
  const [year, month] = [Math.floor(whole / 12), (((whole % 12) + 12) % 12) + 1];
  return written(year, month, Math.min(d, daysIn(year, month)));
}

/**
 * So many days on.
 *
 * @example
 * expect(addDays('2026-12-30', 3)).toBe('2027-01-02');
 */
export function addDays(date: CivilDate, days: number): CivilDate {
  let [year, month, day] = date.split('-').map(Number) as [number, number, number];
  day += days;
  while (day > daysIn(year, month)) {
    day -= daysIn(year, month);
    [year, month] = month === 12 ? [year + 1, 1] : [year, month + 1];
  }
  while (day < 1) {
    [year, month] = month === 1 ? [year - 1, 12] : [year, month - 1];
    day += daysIn(year, month);
  }
  return written(year, month, day);
}

const written = (year: number, month: number, day: number): CivilDate =>
  `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}` as CivilDate;
