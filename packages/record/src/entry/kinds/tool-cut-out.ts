import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

/** Why a tool stopped without a stall. */
export const CUT_OUT_CAUSES = ['empty', 'hot', 'fault', 'pressure lost', 'not known'] as const;
const body = z.strictObject({
  joint: z.optional(field.joint),
  bolt: z.optional(field.position),
  tool: field.label,
  cause: z.enum(CUT_OUT_CAUSES),
});

/** The tool stopped and it was no stall: the bolt is not done. */
export const toolCutOut = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint, tool }) => ({ tool: [tool], ...(joint === undefined ? {} : { joint: [joint] }) }),
  fold: {
    tool: (tool, told) => {
      tool.cutOuts.push({ mention: mentionOf(told), cause: told.body.cause });
    },
    joint: (joint, told) => {
      const { tool, cause, bolt } = told.body;
      joint.cutOuts.push({ mention: mentionOf(told), tool, cause, ...(bolt === undefined ? {} : { bolt }) });
    },
  },
});
