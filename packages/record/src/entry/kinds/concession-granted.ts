import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({ number: field.label, joints: z.array(field.joint), text: field.text, authority: field.label });

/** A departure that was agreed beforehand. */
export const concessionGranted = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  signOff: true,
  about: () => ({ book: BOOK }),
  fold: {
    book: (book, told) => {
      const { number, text, authority } = told.body;
      book.concessions.push({ mention: mentionOf(told), number, text, authority });
    },
  },
});
