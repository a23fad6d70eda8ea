import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({ number: field.label, joints: z.array(field.joint), reason: field.text });

/** A plan was withdrawn: nobody tightens to it any more. */
export const planWithdrawn = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  signOff: true,
  about: ({ joints }) => ({ book: BOOK, joint: joints }),
  fold: {
    book: (book, { body: { number, reason } }) => {
      for (const plan of book.plans) if (plan.number === number) plan.withdrawn = reason;
    },
    joint: (joint, { body: { number } }) => {
      if (joint.plan?.number === number) joint.plan.withdrawn = true;
    },
  },
});
