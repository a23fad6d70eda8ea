import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  tool: field.label,
  setting: field.label,
  passed: field.yes,
  readingNewtonMillimetre: z.optional(field.count),
  against: z.optional(field.label),
});
export type ToolChecked = z.infer<typeof body>;

/** The daily tool check. */
export const toolChecked = defineKind<ToolChecked>({
  version: 1,
  body,
  judgedBy: true,
  about: ({ tool }) => ({ tool: [tool] }),
  fold: {
    tool: (tool, told) => {
      const { setting, passed, readingNewtonMillimetre, against } = told.body;
      tool.checks.push({
        mention: mentionOf(told),
        setting,
        passed,
        ...(readingNewtonMillimetre === undefined ? {} : { readingNewtonMillimetre }),
        ...(against === undefined ? {} : { against }),
      });
    },
  },
});
