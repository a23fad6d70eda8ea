import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ device: field.device, reason: field.text });

/** A device was revoked: lost, copied or handed back. */
export const deviceRevoked = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  judgedBy: true,
  about: ({ device }) => ({ device: [device] }),
  fold: {
    device: (device) => {
      device.revoked = true;
    },
  },
});
