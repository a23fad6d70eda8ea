import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ tool: field.label, reason: field.text });

/** A tool went back, or is not to be used. */
export const toolWithdrawn = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ tool }) => ({ tool: [tool] }),
  fold: {
    tool: (tool, { body: { reason } }) => {
      tool.withdrawn = true;
      tool.withdrawnFor = reason;
    },
  },
});
