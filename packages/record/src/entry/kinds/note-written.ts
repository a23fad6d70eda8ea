import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({ joint: z.optional(field.joint), text: field.text });

/** Whatever has no kind of its own. */
export const noteWritten = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: () => ({ book: BOOK }),
  fold: {
    book: (book, told) => {
      const { joint, text } = told.body;
      book.notes.push({ mention: mentionOf(told), text, ...(joint === undefined ? {} : { joint }) });
    },
  },
});
