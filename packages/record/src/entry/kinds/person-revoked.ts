import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

const body = z.strictObject({ person: field.person, reason: field.text });

/** A person was taken off; what was told before stands. */
export const personRevoked = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  judgedBy: true,
  about: ({ person }) => ({ person: [person] }),
  fold: {
    person: (person) => {
      person.revoked = true;
    },
  },
});
