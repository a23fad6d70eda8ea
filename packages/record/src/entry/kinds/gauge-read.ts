import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ battery: field.label, bars: field.count, of: field.position });

/** What the battery's gauge showed. */
export const gaugeRead = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ battery }) => ({ battery: [battery] }),
  fold: {
    battery: (battery, told) => {
      const { bars, of } = told.body;
      battery.readings.push({ mention: mentionOf(told), bars, of, pulls: battery.boltsSinceChange });
    },
  },
});
