import { slice } from '../../fold/slice.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ number: field.label, plan: field.hash, slice });
export type CardIssued = z.infer<typeof body>;

/** The card of one joint, as issued with a plan: what work on the joint is judged by. */
export const cardIssued = defineKind<CardIssued>({
  version: 1,
  body,
  about: ({ slice: { joint } }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, { body: { number, plan, slice: issued } }) => {
      const lineOf = new Map(issued.sequence.flatMap((line, at) => line.map((bolt) => [bolt, at] as const)));
      if (joint.plan && joint.plan.slice.card !== issued.card) joint.cardBefore = joint.plan.slice.card;
      joint.tag = issued.tag;
      joint.plan = { number, plan, slice: issued, lineOf };
      delete joint.takenOff;
      joint.progress.clear();
    },
  },
});
