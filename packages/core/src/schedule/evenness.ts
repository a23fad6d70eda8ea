/** How even the forces of a joint are. */
export interface Evenness {
  /** largest |F − target|, share of target */
  readonly worst: number;
  /** (greatest − least)/mean */
  readonly spread: number;
  readonly least: number;
  readonly greatest: number;
}

/**
 * Evenness of forces about a target. Level counts as much as spread.
 *
 * @example
 * const even = evenness([90, 100, 105], 100);
 * expect(even.worst).toBeCloseTo(0.1, 12);
 * expect(even.spread).toBeCloseTo(15 / (295 / 3), 12);
 */
export function evenness(force: ArrayLike<number>, target: number): Evenness {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  let sum = 0;
  for (let i = 0; i < force.length; i += 1) {
    const one = force[i]!;
    least = Math.min(least, one);
    greatest = Math.max(greatest, one);
    sum += one;
  }
  return {
    worst: Math.max(greatest - target, target - least) / target,
    spread: ((greatest - least) * force.length) / sum,
    least,
    greatest,
  };
}
