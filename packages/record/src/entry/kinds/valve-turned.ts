import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  joint: field.joint,
  direction: z.enum(['open', 'close']),
  turnsThousandth: field.count,
  tool: z.optional(field.label),
  setting: z.optional(field.label),
});

/** A gate valve was turned. */
export const valveTurned = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told) => {
      const { turnsThousandth, direction } = told.body;
      joint.valves.push({ mention: mentionOf(told), turnsThousandth, direction });
    },
  },
});
