import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  joint: field.joint,
  from: field.label,
  to: field.label,
  /** of the setting chart the settings were taken from */
  chart: field.hash,
  settings: z.array(z.strictObject({ step: field.label, setting: field.label })),
});

/** Another tool took over on the spot, with settings from a chart that was loaded. */
export const toolSwapped = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told) => {
      const { from, to, settings } = told.body;
      joint.swaps.push({ mention: mentionOf(told), from, to, settings });
    },
  },
});
