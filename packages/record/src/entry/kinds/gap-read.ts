import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  joint: field.joint,
  after: z.optional(field.label),
  gaps: z.array(z.strictObject({ position: field.position, gapMicrometre: field.count })).check(z.minLength(1)),
});

/** Gaps between flange faces, at the bolts named, after a step. */
export const gapRead = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told) => {
      const mention = mentionOf(told);
      for (const { position, gapMicrometre } of told.body.gaps) joint.gaps.push({ mention, at: position, gapMicrometre });
    },
  },
});
