import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ battery: field.label, name: field.label, chargeMilliampereHour: z.optional(field.count) });

/** A battery of the yard. */
export const batteryRegistered = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ battery }) => ({ battery: [battery] }),
  fold: {
    battery: (battery, { body: { name, chargeMilliampereHour } }) => {
      battery.name = name;
      if (chargeMilliampereHour !== undefined) battery.chargeMilliampereHour = chargeMilliampereHour;
    },
  },
});
