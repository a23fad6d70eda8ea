import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ device: field.device, key: field.key, name: field.label });

/** A device may write into this book; its id follows from its key. */
export const deviceEnrolled = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  judgedBy: true,
  about: ({ device }) => ({ device: [device] }),
  fold: {
    device: (device, { body: { key, name } }) => {
      Object.assign(device, { key, name, enrolled: true, revoked: false });
    },
  },
});
