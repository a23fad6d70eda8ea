import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ joint: field.joint, passed: field.yes, text: z.optional(field.text) });

/** The plies are in firm contact, or not yet. */
export const snugChecked = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told) => {
      joint.snug = { ...mentionOf(told), passed: told.body.passed };
    },
  },
});
