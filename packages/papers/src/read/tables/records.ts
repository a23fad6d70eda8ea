import type { Field } from '../field.ts';

/** A row for each bolt, or each stretch of bolts, that was tightened in a step. */
export const RECORD_FIELDS = {
  joint: { says: 'joint' },
  bolt: { says: 'bolt number' },
  step: { says: 'step' },
  done: { says: 'date' },
  torque: { says: 'torque', dimension: 'torque' },
  angle: { says: 'angle', dimension: 'angle' },
  tool: { says: 'tool' },
  setting: { says: 'setting' },
  end: { says: 'end signal' },
  card: { says: 'card' },
} as const satisfies Readonly<Record<string, Field>>;
