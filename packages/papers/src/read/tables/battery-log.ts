import type { Field } from '../field.ts';

/** A row for each charge: how many bolts a battery did on it. */
export const BATTERY_FIELDS = {
  serial: { says: 'battery' },
  date: { says: 'date' },
  bolts: { says: 'bolts on one charge' },
} as const satisfies Readonly<Record<string, Field>>;
