import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ tool: field.label, battery: field.label, out: z.optional(field.label) });

/** A battery went into a tool, and another came out. */
export const batteryChanged = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ battery, out }) => ({ battery: out === undefined || out === battery ? [battery] : [battery, out] }),
  fold: {
    battery: (draft, { body: { tool, battery } }) => {
      if (draft.battery === battery) {
        draft.inTool = tool;
        draft.boltsSinceChange = 0;
        draft.firstReading = draft.readings.length;
      } else delete draft.inTool;
    },
  },
});
