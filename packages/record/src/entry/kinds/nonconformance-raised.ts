import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  /** its own id: unique in the book */
  nonconformance: field.label,
  number: field.label,
  joint: z.optional(field.joint),
  bolts: z.optional(z.array(field.position)),
  text: field.text,
});

/** A nonconformance was found by a person, with its number. */
export const nonconformanceRaised = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ nonconformance, joint }) => ({ nonconformance: [nonconformance], ...(joint === undefined ? {} : { joint: [joint] }) }),
  fold: {
    nonconformance: (draft, told) => {
      const { number, joint, bolts, text } = told.body;
      Object.assign(draft, { number, text, bolts: bolts ?? [], raised: mentionOf(told) });
      if (joint !== undefined) draft.joint = joint;
    },
    joint: (joint, { body: { nonconformance } }) => {
      joint.nonconformances.push(nonconformance);
    },
  },
});
