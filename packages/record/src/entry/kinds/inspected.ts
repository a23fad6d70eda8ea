import { notice } from '@clampwright/core';
import { find } from '../../fold/found.ts';
import { boltOf } from '../../fold/joint-draft.ts';
import { judgePerson } from '../../fold/judge-work.ts';
import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  joint: field.joint,
  bolt: field.position,
  rule: field.label,
  /** the inspector's own wrench */
  tool: z.optional(field.label),
  torqueNewtonMillimetre: z.optional(field.count),
  angleMilliDegree: z.optional(field.count),
  /** seed the sample was drawn with */
  seed: z.optional(field.label),
  passed: field.yes,
});

/** One bolt of the sample was inspected. */
export const inspected = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told, look) => {
      const { bolt, passed, angleMilliDegree } = told.body;
      judgePerson(joint.found, told, look);
      boltOf(joint, bolt).inspections.push({
        mention: mentionOf(told),
        passed,
        ...(angleMilliDegree === undefined ? {} : { angleMilliDegree }),
      });
      if (!passed) find(joint.found, told, notice('inspection-failed', { bolt }));
    },
  },
});
