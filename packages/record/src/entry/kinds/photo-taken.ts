import { mentionOf } from '../../fold/mention.ts';
import { field, z } from '../field.ts';
import { BOOK, defineKind } from '../kind.ts';

const body = z.strictObject({ joint: z.optional(field.joint), bolt: z.optional(field.position), photo: field.hash, type: field.label });

/** A photo, kept as an attachment under its hash. */
export const photoTaken = defineKind<z.infer<typeof body>>({
  version: 1,
  body,
  about: () => ({ book: BOOK }),
  fold: {
    book: (book, told) => {
      const { joint, photo } = told.body;
      book.photos.push({ mention: mentionOf(told), photo, ...(joint === undefined ? {} : { joint }) });
    },
  },
});
