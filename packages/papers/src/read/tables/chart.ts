import type { Field } from '../field.ts';

/** A chart in long form, one setting a row: what the tool's labels say, and the torque measured there. */
export const CHART_FIELDS = {
  gear: { says: 'gear' },
  step: { says: 'step' },
  pumpPressure: { says: 'pump pressure' },
  airPressure: { says: 'air pressure' },
  scale: { says: 'scale' },
  torque: { says: 'torque', dimension: 'torque' },
  deviation: { says: 'standard deviation', dimension: 'share' },
  shots: { says: 'shots', dimension: 'number' },
  use: { says: 'use' },
} as const satisfies Readonly<Record<string, Field>>;

export type ChartColumn = keyof typeof CHART_FIELDS;
