import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({ file: field.hash, name: field.label, text: z.optional(field.text) });

/** Something was taken over from a file, which is kept as an attachment. */
export const imported = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: () => ({ book: BOOK }),
  fold: {
    book: (book, told) => {
      const { file, name } = told.body;
      book.imports.push({ mention: mentionOf(told), file, name });
    },
  },
});
