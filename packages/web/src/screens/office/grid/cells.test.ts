import { expect, test } from 'vitest';
import { cellsIn, fromTabbed, pasted, rangeOf, toTabbed } from './cells.ts';

test('toTabbed() and fromTabbed() give back the same cells, with lines and quotation marks inside', () => {
  const rows = [
    ['M20', 'say "so"', 'two\nlines'],
    ['', 'a\tb', '12,5'],
  ];
  expect(fromTabbed(toTabbed(rows))).toEqual(rows);
});

test('fromTabbed() reads what a spreadsheet copies: carriage returns, a last line end', () => {
  expect(fromTabbed('A\tB\r\n1\t2\r\n')).toEqual([
    ['A', 'B'],
    ['1', '2'],
  ]);
});

test('pasted() fills a selection with one cell, and lays out more from its corner', () => {
  const range = rangeOf({ row: 3, col: 1 }, { row: 1, col: 2 });
  expect(pasted([['x']], range)).toEqual(cellsIn(range).map((at) => ({ ...at, text: 'x' })));
  expect(pasted([['a', 'b', 'c']], rangeOf({ row: 0, col: 0 }, { row: 1, col: 0 }))).toHaveLength(6);
  expect(pasted([['a'], ['b']], rangeOf({ row: 5, col: 0 }, { row: 5, col: 0 }))).toEqual([
    { row: 5, col: 0, text: 'a' },
    { row: 6, col: 0, text: 'b' },
  ]);
});
