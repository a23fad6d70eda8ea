import { type CivilDate, civilDate, type Notice, notice } from '@clampwright/core';
import { z } from 'zod';
import { isLabel, LONGEST_LABEL } from './label.ts';
import { type Dimension, readQuantity, type ValueOf } from './quantity.ts';
import { ZONES, zoneText } from './zone.ts';

/** Says what is wrong with a value in the words that the rest of the house has for it. */
function wrong(context: z.RefinementCtx, said: Notice): never {
  context.addIssue({ code: 'custom', params: { said } });
  return z.NEVER;
}

/** A quantity with its unit: `150 mm`, `4 %`. A bare number is refused, except where the dimension has no unit. */
export const quantity = <D extends Dimension>(dimension: D) =>
  z.string().transform((given, context): ValueOf[D] => {
    const read = readQuantity(given, dimension, undefined, {}, 'point');
    return read.ok ? read.value : wrong(context, read.notices[0]!);
  });

/** A plain number between two bounds, decimal point; whole where `whole` says so. */
export const between = (low: number, high: number, whole = false) =>
  z.string().transform((given, context): number => {
    const value = given.trim() === '' ? Number.NaN : Number(given);
    if (value >= low && value <= high && (!whole || Number.isInteger(value))) return value;
    return wrong(context, notice(whole ? 'whole-number-outside' : 'number-outside', { low, high }));
  });

export const date = z.string().transform((given, context): CivilDate => {
  return civilDate(given) ?? wrong(context, notice('date-unreadable', {}));
});

/** A name, a serial number, a permit; numbers arrive as they are written (see `readYaml`), so `0012` and `1.10` stay themselves. */
export const word = z
  .string()
  .transform((given) => given.trim())
  .refine((given) => given !== '', { message: 'a word or a name' });

/** A word that the log keeps as a label: an id, a serial number, the name of a tool. */
export const label = word.transform((given, context): string =>
  isLabel(given) ? given : wrong(context, notice('label-too-long', { most: LONGEST_LABEL })),
);

/** A path inside the job folder. */
export const insidePath = z.string().refine((path) => !leavesFolder(path), { message: 'a path inside the job folder' });

const leavesFolder = (path: string): boolean =>
  path.startsWith('/') || path.startsWith('\\') || /^[a-z]:/i.test(path) || path.split(/[\\/]/).includes('..') || path.includes('\0');

/** A zone of a hazardous area, as in the joint list. */
export const zone = z.string().transform((given, context): string => {
  const bare = zoneText(given.trim()).toLowerCase();
  if (Object.hasOwn(ZONES, bare)) return bare;
  return wrong(context, notice('word-unknown', { wanted: Object.keys(ZONES).join(', ') }));
});
