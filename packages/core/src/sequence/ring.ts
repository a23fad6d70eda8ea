import { starOrder } from './star.ts';

/** Bolts in tightening order; one entry holds the bolts that are tightened at the same moment by synchronous tools. */
export type TighteningList = readonly (readonly number[])[];

export const oneByOne = (order: readonly number[]): TighteningList => order.map((bolt) => [bolt]);

/** Once round the ring from bolt 1, in the direction of numbering. */
export const circularOrder = (boltCount: number): number[] => Array.from({ length: boltCount }, (_, i) => i + 1);

/**
 * Star order for several synchronous tools, spaced evenly round the ring.
 *
 * - `tools` must divide the number of bolts; else the list falls back to one tool and `tools` of the result says so
 *
 * Source: ASME PCC-1:2013 Appendix F, simultaneous tightening with tools 180° or 90° apart (from memory).
 *
 * @example
 * expect(synchronousStar(8, 2)).toEqual([[1, 5], [3, 7], [2, 6], [4, 8]]);
 * expect(synchronousStar(8, 4)).toEqual([[1, 3, 5, 7], [2, 4, 6, 8]]);
 */
export function synchronousStar(boltCount: number, tools: number): TighteningList {
  if (tools <= 1 || boltCount % tools !== 0) return oneByOne(starOrder(boltCount));
  const apart = boltCount / tools;
  const seen = new Set<number>();
  const list: number[][] = [];
  for (const bolt of starOrder(boltCount)) {
    const start = ((bolt - 1) % apart) + 1;
    if (seen.has(start)) continue;
    seen.add(start);
    list.push(Array.from({ length: tools }, (_, i) => start + i * apart));
  }
  return list;
}

/**
 * The number painted at each position: the inverse of a tightening order. Entry i is the turn at which bolt i + 1 comes.
 *
 * @example
 * expect(paintedNumbers([1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12])).toEqual([1, 5, 9, 3, 7, 11, 2, 6, 10, 4, 8, 12]);
 */
export function paintedNumbers(order: readonly number[]): number[] {
  const painted = new Array<number>(order.length);
  for (const [turn, bolt] of order.entries()) painted[bolt - 1] = turn + 1;
  return painted;
}

/** Is this list every bolt of the joint exactly once? The engineer's own sequence must be. */
export const isPermutation = (order: readonly number[], boltCount: number): boolean =>
  order.length === boltCount &&
  new Set(order).size === boltCount &&
  order.every((bolt) => Number.isInteger(bolt) && bolt >= 1 && bolt <= boltCount);
