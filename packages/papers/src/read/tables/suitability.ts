import type { Field } from '../field.ts';

/** A row for each assembly of a suitability test; the rows of one lot are one test. */
export const SUITABILITY_FIELDS = {
  lot: { says: 'lot' },
  size: { says: 'size' },
  grade: { says: 'grade' },
  system: { says: 'system' },
  preload: { says: 'preload', dimension: 'force' },
  clamp: { says: 'clamped thickness', dimension: 'length' },
  torque: { says: 'torque', dimension: 'torque' },
  greatestForce: { says: 'greatest force', dimension: 'force' },
  firstRotation: { says: 'first rotation', dimension: 'angle' },
  secondRotation: { says: 'second rotation', dimension: 'angle' },
} as const satisfies Readonly<Record<string, Field>>;
