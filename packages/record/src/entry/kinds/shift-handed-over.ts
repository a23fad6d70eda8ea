import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({ to: field.person, text: z.optional(field.text) });

/** One crew handed over to the next. */
export const shiftHandedOver = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  signOff: true,
  about: () => ({ book: BOOK }),
  fold: {
    book: (book, told) => {
      const { to, text } = told.body;
      book.handovers.push({ mention: mentionOf(told), to, ...(text === undefined ? {} : { text }) });
    },
  },
});
