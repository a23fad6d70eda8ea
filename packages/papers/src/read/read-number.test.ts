import { expect, test } from 'vitest';
import { readNumber } from './read-number.ts';

test.each([
  ['812', 812],
  ['812.5', 812.5],
  ['812,5', 812.5],
  ['0,125', 0.125],
  ['0.125', 0.125],
  ['.5', 0.5],
  ['-3', -3],
  ['1 234', 1234],
  ['1 234 567,5', 1234567.5],
  ['1’234', 1234],
  ["1'234.5", 1234.5],
  ['1\u00a0234', 1234],
  ['1.234,5', 1234.5],
  ['1,234.5', 1234.5],
  ['1,234,567', 1234567],
  ['1.234.567', 1234567],
  ['1234,567', 1234.567],
])('%s is %s, whichever sign the file uses for decimals', (text, value) => {
  expect([readNumber(text, 'comma'), readNumber(text, 'point')]).toEqual([value, value]);
});

test('a comma before three digits is a decimal sign only where decimals have commas, and a point likewise', () => {
  expect([readNumber('1,234', 'point'), readNumber('1,234', 'comma')]).toEqual(['ambiguous', 1.234]);
  expect([readNumber('1.234', 'point'), readNumber('1.234', 'comma')]).toEqual([1.234, 'ambiguous']);
});

test.each(['', '.', ',', '-', '1 2', '12 34', '1.5.2', '1,2,3', '1,23.4', '12.34,5', '1..2', '--1', '1,2345,678', '1 2345'])(
  '“%s” is no number, and is not patched into one',
  (text) => {
    expect([readNumber(text, 'comma'), readNumber(text, 'point')]).toEqual([undefined, undefined]);
  },
);
