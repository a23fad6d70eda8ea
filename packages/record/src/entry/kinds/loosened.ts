import { boltOf } from '../../fold/joint-draft.ts';
import { judgePerson } from '../../fold/judge-work.ts';
import { startAfresh } from '../../fold/tighten-bolt.ts';
import { field, positions, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  joint: field.joint,
  bolts: positions,
  tool: z.optional(field.label),
  setting: z.optional(field.label),
  reason: z.optional(field.text),
});

/** Bolts were loosened; what was tightened before no longer counts. */
export const loosened = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told, look) => {
      judgePerson(joint.found, told, look);
      for (const position of told.body.bolts) {
        startAfresh(joint, position);
        boltOf(joint, position).loosened = true;
      }
    },
  },
});
