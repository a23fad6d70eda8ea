/**
 * Order in which n quartets (or pairs) of a ring are started, 1-based: successive ones lie apart.
 * Up to 8 as the cross-pattern table prints it (ASME PCC-1:2013 Table 4; 7 and 8 from memory); beyond, halves are interleaved
 * (even n) or odd numbers come before even ones (odd n), which is the same rule.
 */
function starts(n: number): number[] {
  const printed: Readonly<Record<number, readonly number[]>> = {
    3: [1, 2, 3],
    4: [1, 3, 2, 4],
    7: [1, 4, 6, 2, 5, 7, 3],
    8: [1, 5, 3, 7, 2, 6, 4, 8],
  };
  const known = printed[n];
  if (known) return [...known];
  if (n % 2 === 0) return Array.from({ length: n }, (_, i) => (i % 2 === 0 ? i / 2 + 1 : n / 2 + (i + 1) / 2));
  return [...every(2, 1, n), ...every(2, 2, n)];
}

const every = (step: number, from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, Math.floor((to - from) / step) + 1) }, (_, i) => from + i * step);

/** Groups of neighbours taken as one bolt, from 36 bolts up, where the cross-pattern table prints a list. */
const GROUPED: Readonly<Record<number, number>> = { 36: 3, 40: 4, 44: 4, 48: 4 };

/**
 * Star order for any number of bolts on a ring: bolt positions in the order they are tightened, 1-based.
 *
 * - N divisible by 4: quartets s, s + N/2, s + N/4, s + 3N/4
 * - other even N: opposite pairs, successive pairs about a quarter turn apart
 * - odd N: steps of just under half a turn
 * - 36, 40, 44, 48: neighbours in threes or fours count as one bolt
 *
 * Two habits exist: this list, and the number painted at each position ({@link paintedNumbers}); they are different things.
 * Source: ASME PCC-1:2013 Table 4 (cross pattern), N ≤ 24 published, 28 to 48 from memory; other N our own continuation.
 *
 * @example
 * expect(starOrder(12)).toEqual([1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12]);
 * expect(starOrder(5)).toEqual([1, 3, 5, 2, 4]);
 */
export function starOrder(boltCount: number): number[] {
  const size = GROUPED[boltCount] ?? 1;
  const order = ungrouped(boltCount / size);
  return order.flatMap((group) => Array.from({ length: size }, (_, i) => (group - 1) * size + i + 1));
}

function ungrouped(n: number): number[] {
  if (n <= 2) return every(1, 1, n);
  if (n % 4 === 0) {
    const quarter = n / 4;
    return starts(quarter).flatMap((s) => [s, s + 2 * quarter, s + quarter, s + 3 * quarter]);
  }
  if (n % 2 === 0) {
    const half = n / 2;
    const apart = (half + 1) / 2;
    return Array.from({ length: half }, (_, i) => (i % 2 === 0 ? i / 2 + 1 : apart + (i + 1) / 2)).flatMap((s) => [s, s + half]);
  }
  const step = (n - 1) / 2;
  return Array.from({ length: n }, (_, i) => ((i * step) % n) + 1);
}
