import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({ number: field.label, reason: field.text });
export type PlanWithdrawn = z.infer<typeof body>;

/** A plan was withdrawn: nobody tightens to it any more. */
export const planWithdrawn = defineKind<PlanWithdrawn>({
  version: 1,
  body,
  signOff: true,
  judgedBy: true,
  about: () => ({ book: BOOK }),
  fold: {
    book: (book, { body: { number, reason } }) => {
      for (const plan of book.plans) if (plan.number === number) plan.withdrawn = reason;
    },
  },
});
