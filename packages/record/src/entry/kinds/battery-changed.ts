import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ tool: field.label, battery: field.label, out: z.optional(field.label) });

/** A battery went into a tool, and another came out. */
export const batteryChanged = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ battery, out }) => ({ battery: out === undefined || out === battery ? [battery] : [battery, out] }),
  fold: {
    battery: (draft, told) => {
      const { tool, battery } = told.body;
      const cameOut = draft.battery !== battery || draft.inTool !== undefined;
      if (cameOut && draft.boltsSinceChange > 0) draft.charges.push({ mention: mentionOf(told), bolts: draft.boltsSinceChange });
      if (draft.battery === battery) {
        draft.inTool = tool;
        draft.boltsSinceChange = 0;
        draft.firstReading = draft.readings.length;
      } else delete draft.inTool;
    },
  },
});
