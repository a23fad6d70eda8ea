import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  /** of the plan that takes the card off */
  number: field.label,
  joint: field.joint,
  /** there the joint stops; it is no longer in it; or work begun under the plan before does not go on under it */
  reason: z.enum(['stops', 'gone', 'begun']),
});
export type CardWithdrawn = z.infer<typeof body>;

/** A later plan does not carry a joint that an earlier one did: nobody tightens it to the old card any more, until a plan has it again. */
export const cardWithdrawn = defineKind<CardWithdrawn>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, { body: { number, reason } }) => {
      joint.takenOff = { number, reason };
    },
  },
});
