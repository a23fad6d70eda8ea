import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  /** one that a person raised, or the id of a contradiction that was found */
  nonconformance: z.string().check(z.minLength(1), z.maxLength(200)),
  disposition: z.enum(['replace', 'rework', 'use as is']),
  /** who may decide it: role or office of the person who does */
  authority: field.label,
  reason: field.text,
});

/** A named person decided what becomes of a nonconformance. */
export const nonconformanceSettled = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  signOff: true,
  about: ({ nonconformance }) => ({ nonconformance: [nonconformance] }),
  fold: {
    nonconformance: (draft, told) => {
      const { disposition, authority, reason } = told.body;
      draft.settlements.push({ mention: mentionOf(told), disposition, authority, reason });
    },
  },
});
