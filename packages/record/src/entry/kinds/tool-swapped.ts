import { mentionOf } from '../../fold/mention.ts';
import { field, positions, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const setting = z.strictObject({
  step: field.label,
  setting: field.label,
  /** bolts it holds for; absent: every bolt of the joint */
  positions: z.optional(positions),
  torqueNewtonMillimetre: z.optional(field.count),
  /** of the reaction arm at this setting */
  reactionNewton: z.optional(field.count),
});
export type SwappedSetting = Readonly<z.infer<typeof setting>>;

const body = z.strictObject({
  joint: field.joint,
  from: field.label,
  to: field.label,
  /** of the setting chart the settings were taken from */
  chart: field.hash,
  settings: z.array(setting),
});

/** Another tool took over on the spot, with settings from a chart that was loaded. */
export const toolSwapped = defineKind<z.infer<typeof body>>({
  version: 2,
  since: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told) => {
      const { from, to, settings } = told.body;
      joint.swaps.push({ mention: mentionOf(told), from, to, settings });
    },
  },
});
