import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../quantity.ts';
import { groupOrder, type Point } from './group.ts';
import { circularOrder, isPermutation, oneByOne, paintedNumbers, synchronousStar } from './ring.ts';
import { starOrder } from './star.ts';

const SEED = { seed: 20_261_125, numRuns: 200 };
const COUNTS = Array.from({ length: 300 }, (_, i) => i + 1);

/** ASME PCC-1:2013 Table 4, cross pattern (from memory). */
const PRINTED: Readonly<Record<number, string>> = {
  4: '1 3 2 4',
  8: '1 5 3 7 2 6 4 8',
  12: '1 7 4 10 2 8 5 11 3 9 6 12',
  16: '1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16',
  20: '1 11 6 16 3 13 8 18 5 15 10 20 2 12 7 17 4 14 9 19',
  24: '1 13 7 19 4 16 10 22 2 14 8 20 5 17 11 23 3 15 9 21 6 18 12 24',
};

test.each(Object.entries(PRINTED))('the star of %s bolts is the printed one', (count, order) => {
  expect(starOrder(Number(count)).join(' ')).toBe(order);
});

test('star, circle and synchronous star name each of 1 to 300 bolts once', () => {
  for (const count of COUNTS) {
    expect(isPermutation(starOrder(count), count)).toBe(true);
    expect(isPermutation(circularOrder(count), count)).toBe(true);
    for (const tools of [1, 2, 3, 4, 8]) expect(isPermutation(synchronousStar(count, tools).flat(), count)).toBe(true);
  }
});

test('synchronous tools stand evenly round the ring, all of them at every pull', () => {
  for (const count of COUNTS) {
    for (const tools of [2, 3, 4]) {
      const list = synchronousStar(count, tools);
      if (count % tools !== 0) expect(list).toEqual(oneByOne(starOrder(count)));
      else for (const pull of list) expect(pull.map((bolt) => bolt - pull[0]!)).toEqual(pull.map((_, i) => (i * count) / tools));
    }
  }
});

test('the first two bolts of a star lie opposite each other, or next to it on an odd ring', () => {
  for (const count of COUNTS.filter((one) => one >= 3 && ![36, 40, 44, 48].includes(one))) {
    const [first, second] = starOrder(count) as [number, number];
    const apart = Math.abs(second - first);
    expect(Math.abs(Math.min(apart, count - apart) - count / 2)).toBeLessThanOrEqual(0.5);
  }
});

test('painted numbers and tightening order are each other’s inverse', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 300 }), fc.constantFrom(1, 2, 4), (count, tools) => {
      const order = synchronousStar(count, tools).flat();
      expect(paintedNumbers(paintedNumbers(order))).toEqual(order);
      for (const [turn, bolt] of order.entries()) expect(paintedNumbers(order)[bolt - 1]).toBe(turn + 1);
    }),
    SEED,
  );
});

test('an engineer’s sequence must name each bolt once', () => {
  expect(isPermutation([2, 1, 3], 3)).toBe(true);
  for (const wrong of [
    [1, 2],
    [1, 2, 2],
    [1, 2, 4],
    [0, 1, 2],
    [1, 2, 2.5],
    [1, 2, Number.NaN],
  ])
    expect(isPermutation(wrong, 3)).toBe(false);
});

const point = fc
  .record({ x: fc.integer({ min: -500, max: 500 }), y: fc.integer({ min: -500, max: 500 }) })
  .map(({ x, y }): Point => ({ x: mm(x), y: mm(y) }));

test('a group is taken once each, from the stiffest part outwards', () => {
  fc.assert(
    fc.property(fc.array(point, { minLength: 1, maxLength: 40 }), point, (bolts, stiffest) => {
      const order = groupOrder(bolts, stiffest);
      expect(isPermutation(order, bolts.length)).toBe(true);
      const reach = order.map((bolt) => Math.hypot(bolts[bolt - 1]!.x - stiffest.x, bolts[bolt - 1]!.y - stiffest.y));
      // bolts within 1 mm count as equally far
      for (let i = 1; i < reach.length; i += 1) expect(reach[i]!).toBeGreaterThan(reach[i - 1]! - 1);
      expect(reach[0]!).toBeLessThan(Math.min(...reach) + 1);
    }),
    SEED,
  );
});

test('EN 1090-2 8.5.1: a cover-plate splice of 2 × 4 bolts starts in the middle and ends at the ends, alternating sides', () => {
  const bolts = Array.from({ length: 8 }, (_, i) => ({ x: mm((i % 4) * 80), y: mm(Math.floor(i / 4) * 110) }));
  const order = groupOrder(bolts);
  expect(order.slice(0, 4).toSorted()).toEqual([2, 3, 6, 7]);
  expect(order.slice(4).toSorted()).toEqual([1, 4, 5, 8]);
  expect([order[0]! + order[1]!, order[4]! + order[5]!]).toEqual([9, 9]);
});
