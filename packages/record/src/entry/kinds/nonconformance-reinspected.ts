import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  nonconformance: z.string().check(z.minLength(1), z.maxLength(200)),
  passed: field.yes,
  text: z.optional(field.text),
});

/** What was replaced or reworked was inspected again. */
export const nonconformanceReinspected = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ nonconformance }) => ({ nonconformance: [nonconformance] }),
  fold: {
    nonconformance: (draft, told) => {
      draft.reinspections.push({ mention: mentionOf(told), passed: told.body.passed });
    },
  },
});
