import { inInch, inKip, inLbfFt, kN, ksi, MPa, mm, N, Nm } from '@clampwright/core';
import { expect, test } from 'vitest';
import { type Dimension, readQuantity } from './quantity.ts';

const value = (text: string, dimension: Dimension, unit?: string) => {
  const found = readQuantity(text, dimension, unit, {}, 'point');
  return found.ok ? found.value : found.notices.map(({ code }) => code).join();
};

// international yard and pound: 1 in = 25.4 mm, 1 lbf = 4.448 221 615 260 5 N
test('units are read from the cell, else from the heading', () => {
  expect(value('812 N·m', 'torque')).toBe(Nm(812));
  for (const unit of ['Nm', 'N m', 'N.m', 'N*m', 'N-m', 'nm']) expect(value(`812 ${unit}`, 'torque')).toBe(Nm(812));
  for (const unit of ['lbf·ft', 'ft-lb', 'ft.lbf', 'lb-ft', 'ft lbf'])
    expect(inLbfFt(value(`600 ${unit}`, 'torque') as never)).toBeCloseTo(600, 9);
  expect(value('247', 'force', 'kN')).toBe(kN(247));
  expect(inKip(value('28 kips', 'force', 'kN') as never)).toBeCloseTo(28, 9);
  expect(value('247000 N', 'force')).toBe(N(247_000));
  expect(inInch(value('2.5"', 'length', 'mm') as never)).toBeCloseTo(2.5, 12);
  expect(value('12 cm', 'length')).toBe(mm(120));
  expect([value('345 N/mm²', 'stress'), value('50 ksi', 'stress')]).toEqual([MPa(345), ksi(50)]);
  expect([value('4 %', 'share'), value('0.04', 'share')]).toEqual([0.04, 0.04]);
});

test.each([
  ['abc', 'quantity-wanted'],
  ['NaN', 'quantity-wanted'],
  ['Infinity', 'quantity-wanted'],
  ['N·m', 'quantity-wanted'],
  ['0', 'number-absurd'],
  ['0.0', 'number-absurd'],
  ['-5', 'number-absurd'],
  ['200000', 'number-absurd'],
  ['99999999999999999999999999', 'number-absurd'],
  ['1e3', 'unit-unknown'],
  ['0x10', 'unit-unknown'],
  ['12 kg', 'unit-unknown'],
  ['12 mm', 'unit-unknown'],
  ['1,234', 'number-ambiguous'],
  ['=1+1', 'cell-formula'],
  ['+A1', 'cell-formula'],
  ['-A1', 'cell-formula'],
  ['@SUM(A1)', 'cell-formula'],
  ['-2+3', 'cell-formula'],
  [`1${' '.repeat(100_000)}x`, 'quantity-wanted'],
])('a torque of “%s” is refused: %s', (text, code) => {
  expect(value(text, 'torque', 'N·m')).toBe(code);
});

test('a number without any unit is asked for one', () => {
  expect(value('812', 'torque')).toBe('unit-missing');
});
