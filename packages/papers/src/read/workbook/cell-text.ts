import type { Shown } from './styles.ts';

/** A cell as text. `exact`: a number whose decimal point is none of a person's writing. */
export interface CellText {
  readonly text: string;
  readonly exact: boolean;
}

const DAY_MS = 86_400_000;
/** Day 0 of the two date systems. Source: ISO/IEC 29500-1, 18.17.4.1; the first one counts a 29 February 1900 that never was. */
const EPOCH = { 1900: Date.UTC(1899, 11, 30), 1904: Date.UTC(1904, 0, 1) } as const;

/** A number as people see it in the cell: dates as year-month-day, shares in percent, with the unit that its format shows. */
export function numberText(written: string, shown: Shown | undefined, dateSystem: 1900 | 1904): CellText {
  const value = Number(written);
  if (!Number.isFinite(value)) return { text: written, exact: false };
  // more than 15 digits are noise of binary fractions
  const plain = (number: number) => String(Number(number.toPrecision(15)));
  switch (shown?.kind) {
    case 'date':
      return { text: dateText(value, dateSystem), exact: false };
    case 'percent':
      return { text: `${plain(value * 100)} %`, exact: true };
    case 'unit':
      return { text: `${plain(value)} ${shown.unit}`, exact: true };
    default:
      return { text: plain(value), exact: true };
  }
}

function dateText(days: number, dateSystem: 1900 | 1904): string {
  const instant = new Date(EPOCH[dateSystem] + Math.round(days * DAY_MS));
  if (Number.isNaN(instant.getTime())) return String(days);
  const [day, time] = instant.toISOString().split('T') as [string, string];
  return time.startsWith('00:00:00') ? day : `${day} ${time.slice(0, 8)}`;
}
