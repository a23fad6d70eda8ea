import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  tool: field.label,
  name: field.label,
  kind: field.label,
  /** of the setting chart's bytes, and when its calibration runs out */
  chart: field.hash,
  certificate: field.label,
  due: field.date,
  /** the tool as somebody typed it: its settings count when another has read them back (chart-loaded) */
  sheet: z.optional(field.hash),
});
export type ToolRegistered = z.infer<typeof body>;

/** A tool of the yard with the setting chart of its serial number; a later one brings the next calibration. */
export const toolRegistered = defineKind<ToolRegistered>({
  version: 2,
  since: 1,
  body,
  judgedBy: true,
  about: ({ tool }) => ({ tool: [tool] }),
  fold: {
    tool: (tool, told) => {
      const { name, kind, chart, due, certificate, sheet } = told.body;
      // settings of the chart before it count no longer, and those of this one not before it is read
      if (tool.certificate !== undefined && (tool.certificate !== certificate || tool.chart !== chart)) delete tool.sheet;
      Object.assign(tool, { name, kind, chart, due, certificate, withdrawn: false });
      delete tool.withdrawnFor;
      delete tool.typed;
      if (sheet !== undefined && tool.sheet !== sheet) tool.typed = sheet;
      tool.certificates.push({ mention: mentionOf(told), number: certificate, due, chart });
    },
  },
});
