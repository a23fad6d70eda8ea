import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  number: field.label,
  joint: field.joint,
  tag: field.label,
  /** of the valve's own card, kept as an attachment: plain JSON of what a tool may do to it */
  card: field.hash,
});
export type ValveIssued = z.infer<typeof body>;

/** A gate valve that may have to be moved, as issued with a plan: by hand, with the tool, or not at all. */
export const valveIssued = defineKind<ValveIssued>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, { body: { number, tag, card } }) => {
      joint.tag = tag;
      joint.valve = { number, card };
    },
  },
});
