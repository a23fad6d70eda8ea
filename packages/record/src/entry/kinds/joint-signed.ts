import { notice } from '@clampwright/core';
import { find } from '../../fold/found.ts';
import { judgePerson } from '../../fold/judge-work.ts';
import { mentionOf } from '../../fold/mention.ts';
import { progressOf } from '../../fold/tighten-bolt.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ joint: field.joint, as: z.enum(['crew', 'inspector', 'planner', 'client']) });

/** A person put their name to a joint. */
export const jointSigned = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  signOff: true,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told, look) => {
      judgePerson(joint.found, told, look);
      joint.signatures.push({ mention: mentionOf(told), as: told.body.as });
      const last = joint.plan?.slice.steps.at(-1);
      const count = last ? progressOf(joint, last.step).open.size : 0;
      if (count > 0) find(joint.found, told, notice('bolts-left-open', { count }));
    },
  },
});
