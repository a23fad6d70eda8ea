import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({
  number: field.label,
  plan: field.hash,
  /** of the job as it was read, tools with their charts included: plain JSON, kept as an attachment */
  job: field.hash,
});
export type JobKept = z.infer<typeof body>;

/** What a plan was made from: a device without network takes the settings of another tool from it, and another planner goes on from it. */
export const jobKept = defineKind<JobKept>({
  version: 1,
  body,
  about: () => ({ book: BOOK }),
  fold: {
    book: (book, { body: { number, job } }) => {
      const plan = book.plans.findLast((one) => one.number === number);
      if (plan) plan.job = job;
    },
  },
});
