import { notice } from '@clampwright/core';
import { find } from '../../fold/found.ts';
import { boltOf } from '../../fold/joint-draft.ts';
import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

/** What may go wrong at a bolt. */
export const TROUBLES = [
  'bolt spun with nut',
  'no stall',
  'stalled at once',
  'unplanned second pull',
  'wrong setting',
  'wet',
  'thread damaged',
  'something else',
] as const;
const body = z.strictObject({ joint: field.joint, bolt: field.position, what: z.enum(TROUBLES), text: z.optional(field.text) });

/** Something went wrong at a bolt; whoever saw it says so. */
export const boltTrouble = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told) => {
      const { bolt, what } = told.body;
      boltOf(joint, bolt).trouble.push({ mention: mentionOf(told), what });
      find(joint.found, told, notice('trouble-reported', { bolt, what }));
    },
  },
});
