import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  joint: field.joint,
  washersRight: field.yes,
  nutMarkingOutward: field.yes,
  protrusionRight: field.yes,
  packingRight: field.yes,
  text: z.optional(field.text),
});

/** Washer side, nut marking, protrusion and packing were looked at before the first bolt. */
export const assemblyChecked = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ joint: [joint] }),
  fold: {
    joint: (joint, told) => {
      const { washersRight, nutMarkingOutward, protrusionRight, packingRight } = told.body;
      joint.assembly = { ...mentionOf(told), passed: washersRight && nutMarkingOutward && protrusionRight && packingRight };
    },
  },
});
