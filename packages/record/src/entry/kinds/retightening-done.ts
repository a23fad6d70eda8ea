import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({ joint: field.joint, moved: field.count, text: z.optional(field.text) });

/** The joint was retightened; `moved`: nuts that turned. */
export const retighteningDone = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ book: BOOK, joint: [joint] }),
  fold: {
    book: (book, told) => {
      book.retightenings.push({ mention: mentionOf(told), joint: told.body.joint, done: true });
    },
    joint: (joint, told) => {
      joint.retightening.push({ mention: mentionOf(told), done: true });
    },
  },
});
