import { notice } from '@clampwright/core';
import { find } from '../../fold/found.ts';
import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  joint: field.joint,
  boltOne: field.text,
  direction: z.enum(['clockwise', 'counter-clockwise']),
  viewedFrom: field.text,
});

/** The crew found bolt 1 and the way the numbers run. */
export const datumConfirmed = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told) => {
      const planned = joint.plan?.slice.datum;
      const { boltOne, direction, viewedFrom } = told.body;
      const agrees =
        planned === undefined || (planned.boltOne === boltOne && planned.direction === direction && planned.viewedFrom === viewedFrom);
      joint.datum = { ...mentionOf(told), agrees };
      if (!agrees) find(joint.found, told, notice('datum-differs', {}));
    },
  },
});
