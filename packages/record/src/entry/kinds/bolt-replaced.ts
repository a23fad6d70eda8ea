import { boltOf } from '../../fold/joint-draft.ts';
import { startAfresh } from '../../fold/tighten-bolt.ts';
import { field, positions, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ joint: field.joint, bolts: positions, lot: z.optional(field.label), reason: field.text });

/** New assemblies were put in; the bolts begin again. */
export const boltReplaced = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, { body: { bolts } }) => {
      for (const position of bolts) {
        startAfresh(joint, position);
        const bolt = boltOf(joint, position);
        bolt.replaced += 1;
        bolt.loosened = false;
      }
    },
  },
});
