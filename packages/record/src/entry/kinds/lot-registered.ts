import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({
  lot: field.lot,
  name: field.label,
  designation: field.label,
  certificate: z.optional(field.label),
  lubricant: z.optional(field.label),
});

/** Fasteners of one delivery. */
export const lotRegistered = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ lot }) => ({ lot: [lot] }),
  fold: {
    lot: (lot, { body: { name, designation, certificate, lubricant } }) => {
      Object.assign(lot, { name, designation });
      if (certificate !== undefined) lot.certificate = certificate;
      if (lubricant !== undefined) lot.lubricant = lubricant;
    },
  },
});
