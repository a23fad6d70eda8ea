import { field, z } from '../field.ts';
import { defineKind } from '../kind.ts';

export const ROLES = ['planner', 'crew', 'inspector', 'store', 'client'] as const;
const body = z.strictObject({
  person: field.person,
  /** of the attachment that holds the name; erasing it leaves the chain whole */
  name: field.hash,
  roles: z.array(z.enum(ROLES)).check(z.minLength(1)),
  qualification: z.optional(field.label),
  qualifiedUntil: z.optional(field.date),
});
export type PersonEnrolled = z.infer<typeof body>;

/** A person may act in this book, and in which roles. A later one replaces it. */
export const personEnrolled = defineKind<PersonEnrolled>({
  version: 1,
  body,
  judgedBy: true,
  about: ({ person }) => ({ person: [person] }),
  fold: {
    person: (person, { body: { name, roles, qualification, qualifiedUntil } }) => {
      Object.assign(person, { nameHash: name, roles, revoked: false });
      if (qualification !== undefined) person.qualification = qualification;
      if (qualifiedUntil !== undefined) person.qualifiedUntil = qualifiedUntil;
    },
  },
});
