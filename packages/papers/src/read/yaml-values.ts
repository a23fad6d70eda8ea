import { type CivilDate, civilDate } from '@clampwright/core';
import { z } from 'zod';
import { isLabel, LONGEST_LABEL } from './label.ts';
import { type Dimension, readQuantity, unitsOf, type ValueOf } from './quantity.ts';
import { ZONES, zoneText } from './zone.ts';

/** A quantity with its unit: `150 mm`, `4 %`. A bare number is refused, except where the dimension has no unit. */
export const quantity = <D extends Dimension>(dimension: D) =>
  z.string().transform((given, context): ValueOf[D] => {
    const read = readQuantity(given, dimension, undefined, {}, 'point');
    if (read.ok) return read.value;
    context.addIssue({
      code: 'custom',
      message: unitsOf(dimension) === '' ? 'a number' : `a number with its unit (${unitsOf(dimension)})`,
    });
    return z.NEVER;
  });

/** A plain number between two bounds, decimal point; whole where `whole` says so. */
export const between = (low: number, high: number, whole = false) =>
  z.string().transform((given, context): number => {
    const value = given.trim() === '' ? Number.NaN : Number(given);
    if (value >= low && value <= high && (!whole || Number.isInteger(value))) return value;
    context.addIssue({ code: 'custom', message: `a ${whole ? 'whole ' : ''}number from ${low} to ${high}` });
    return z.NEVER;
  });

export const date = z.string().transform((given, context): CivilDate => {
  const read = civilDate(given);
  if (read) return read;
  context.addIssue({ code: 'custom', message: 'a date of the calendar, year-month-day: 2026-11-25' });
  return z.NEVER;
});

/** A name, a serial number, a permit; numbers arrive as they are written (see `readYaml`), so `0012` and `1.10` stay themselves. */
export const word = z
  .string()
  .transform((given) => given.trim())
  .refine((given) => given !== '', { message: 'a word or a name' });

/** A word that the log keeps as a label: an id, a serial number, the name of a tool. */
export const label = word.refine(isLabel, { message: `a name of up to ${LONGEST_LABEL} characters, on one line` });

/** A path inside the job folder. */
export const insidePath = z.string().refine((path) => !leavesFolder(path), { message: 'a path inside the job folder' });

const leavesFolder = (path: string): boolean =>
  path.startsWith('/') || path.startsWith('\\') || /^[a-z]:/i.test(path) || path.split(/[\\/]/).includes('..') || path.includes('\0');

/** A zone of a hazardous area, as in the joint list. */
export const zone = z.string().transform((given, context): string => {
  const bare = zoneText(given.trim()).toLowerCase();
  if (Object.hasOwn(ZONES, bare)) return bare;
  context.addIssue({ code: 'custom', message: Object.keys(ZONES).join(', ') });
  return z.NEVER;
});
