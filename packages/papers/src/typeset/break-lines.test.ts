import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakLines } from './break-lines.ts';

const widthOf = (text: string) => [...text].length;

test('no line is wider than asked, and no sign is lost', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme-ascii' }), fc.integer({ min: 1, max: 30 }), (text, width) => {
      const lines = breakLines(text, width, widthOf);
      for (const line of lines) expect(widthOf(line)).toBeLessThanOrEqual(width);
      expect(lines.join('').replace(/ /g, '')).toBe(text.replace(/[ \n]/g, ''));
    }),
  );
});

test('a word that fits is never torn', () => {
  fc.assert(
    fc.property(fc.array(fc.stringMatching(/^[a-z]{1,8}$/), { minLength: 1 }), fc.integer({ min: 8, max: 40 }), (words, width) => {
      expect(breakLines(words.join(' '), width, widthOf).flatMap((line) => line.split(' '))).toEqual(words);
    }),
  );
});
