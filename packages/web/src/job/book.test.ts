import { type Kept, utf8 } from '@clampwright/record';
import { jointId, openingEntries, testSlice, testWriter } from '@clampwright/record/test-book';
import { expect, test } from 'vitest';
import { type BookSource, openBook } from './book.ts';

/** A log that grows while it is read, as it does when two ways of sending run at once. */
test('an entry that arrives while a book is being read is in it after the next look', async () => {
  const writer = testWriter(1);
  const log: Kept[] = openingEntries(writer, [testWriter(2)], [testSlice(1, 4)]);
  let meanwhile = () => {};
  const source: BookSource = {
    entries: async (_, from = 0) => {
      const seen = log.slice(from);
      meanwhile();
      return seen;
    },
    cursor: async () => ({ size: log.length, roots: [] }),
    attachment: async () => utf8('{}'),
    append: () => Promise.reject(new Error('nothing is written here')),
  };
  const book = await openBook(source, 'j-test');
  meanwhile = () => {
    log.push(writer.write('note-written', { joint: jointId(1), text: 'gust' }));
    meanwhile = () => {};
  };
  await book.refresh();
  await book.refresh();
  expect(book.fold.state('book', 'book').notes.map(({ text }) => text)).toEqual(['gust']);
});
