import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({ joint: field.joint, due: field.date, rule: field.label });

/** The joint is to be retightened by a date. */
export const retighteningDue = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: ({ joint }) => ({ book: BOOK, joint: [joint] }),
  fold: {
    book: (book, told) => {
      const { joint, due } = told.body;
      book.retightenings.push({ mention: mentionOf(told), joint, due });
    },
    joint: (joint, told) => {
      joint.retightening.push({ mention: mentionOf(told), due: told.body.due });
    },
  },
});
