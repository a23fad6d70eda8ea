import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  tool: field.label,
  certificate: field.label,
  /** of the tool as it was read, its chart included: plain JSON, kept as an attachment */
  sheet: field.hash,
});

/** A tool's chart as read, so that any device takes settings from it without network. */
export const chartLoaded = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ tool }) => ({ tool: [tool] }),
  fold: {
    tool: (tool, told) => {
      const { certificate, sheet } = told.body;
      if (tool.certificate === undefined || tool.certificate === certificate) {
        tool.sheet = sheet;
        delete tool.typed;
      }
      tool.charts.push({ mention: mentionOf(told), certificate, sheet });
    },
  },
});
