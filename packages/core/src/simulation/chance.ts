/** A chance estimated from runs, with the interval that holds it in 95 of 100 cases. */
export interface Chance {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

const Z = 1.959963984540054;

/**
 * Chance from `hits` in `runs`, with Wilson's interval, which stays honest at no hits and at few runs.
 *
 *     (p + z²/2n ± z·√(p(1−p)/n + z²/4n²))/(1 + z²/n),  z = 1.96
 *
 * Source: Wilson, J. Am. Stat. Assoc. 22 (1927) 209; check value: NIST/SEMATECH e-Handbook 7.2.4.1 (4 of 20).
 *
 * @example
 * expect(chanceOf(0, 1000).high).toBeCloseTo(0.00383, 5);
 */
export function chanceOf(hits: number, runs: number): Chance {
  if (runs === 0) return { value: 0, low: 0, high: 1 };
  const p = hits / runs;
  const centre = p + Z ** 2 / (2 * runs);
  const half = Z * Math.sqrt((p * (1 - p)) / runs + Z ** 2 / (4 * runs ** 2));
  const scale = 1 + Z ** 2 / runs;
  return { value: p, low: hits === 0 ? 0 : (centre - half) / scale, high: hits === runs ? 1 : (centre + half) / scale };
}
