import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ lot: field.lot, rule: field.label, passed: field.yes, report: z.optional(field.hash) });

/** Suitability test, or pre-installation verification, of one lot. */
export const suitabilityTested = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ lot }) => ({ lot: [lot] }),
  fold: {
    lot: (lot, told) => {
      const { rule, passed, report } = told.body;
      lot.tests.push({ mention: mentionOf(told), rule, passed, ...(report === undefined ? {} : { report }) });
    },
  },
});
