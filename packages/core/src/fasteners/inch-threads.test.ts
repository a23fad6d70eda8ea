import { describe, expect, test } from 'vitest';
import { inInch2 } from '../quantity.ts';
import { findInchThread } from './find-inch-thread.ts';
import { INCH_THREADS } from './inch-threads.ts';
import { inchStressArea, rootArea } from './thread.ts';

describe('INCH_THREADS', () => {
  // the printed tables give three to five figures, the last sometimes cut off
  test.each(INCH_THREADS)('$designation: both printed areas are those of the formulas of ASME B1.1', (thread) => {
    const printed = { A_t: inInch2(thread.printedStressArea!), A_r: inInch2(thread.printedRootArea!) };
    expect(inInch2(inchStressArea(thread.diameter, thread.pitch)) / printed.A_t).toBeCloseTo(1, 2);
    expect(inInch2(rootArea(thread.diameter, thread.pitch)) / printed.A_r).toBeCloseTo(1, 2);
  });
});

describe('findInchThread()', () => {
  test.each([
    ['3/4-10 UNC', '3/4-10 UNC'],
    ['3/4"', '3/4-10 UNC'],
    ['0.75', '3/4-10 UNC'],
    ['.5', '1/2-13 UNC'],
    ['3/4 UNC', '3/4-10 UNC'],
    ['3/4-10UNC-2A', '3/4-10 UNC'],
    ['1 1/8', '1 1/8-7 UNC'],
    ['1-1/8-7 UNC', '1 1/8-7 UNC'],
    ['1-1/8-8UN', '1 1/8-8UN'],
    ['1-1/8 - 8 UN', '1 1/8-8UN'],
    ['1 1/8 8UN', '1 1/8-8UN'],
    ['1-8', '1-8 UNC'],
    ['7/8-14 UNF', '7/8-14 UNF'],
    ['2-1/4-4.5 UNC', '2 1/4-4.5 UNC'],
    ['1 in', '1-8 UNC'],
  ])('reads %s as %s', (text, designation) => {
    expect(findInchThread(text)?.designation).toBe(designation);
  });
  test.each(['M24', '3/4-11', '1 1/8-10 UNC', '5', '1/0', '', 'UNC', '7/8-9 UNF'])('knows no thread %s', (text) => {
    expect(findInchThread(text)).toBeUndefined();
  });
  test('takes a bare size above 1 in as 8UN on a flange stud only', () => {
    expect(findInchThread('1 1/4', 'flange-stud')?.designation).toBe('1 1/4-8UN');
    expect(findInchThread('1', 'flange-stud')?.designation).toBe('1-8 UNC');
  });
});
