import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  joint: field.joint,
  point: z.enum(['hold', 'witness', 'review']),
  name: field.label,
  /** what was seen: number of the permit, of the test, of the paper */
  seen: z.optional(field.label),
});

/** A hold, witness or review point was released by the person named. */
export const pointReleased = defineKind<z.infer<typeof body>>({
  version: 2,
  since: 1,
  body,
  signOff: true,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told) => {
      const { point, name, seen } = told.body;
      joint.released.push({ mention: mentionOf(told), point, name, ...(seen === undefined ? {} : { seen }) });
    },
  },
});
