import type { Level } from './schedule.ts';

/**
 * The at most `most` levels that serve wanted forces best, in the least-squares sense, by dynamic programming over the sorted forces:
 * groups are contiguous, each takes the level nearest to its mean. Returns the level of each force.
 */
export function clusterToLevels(wanted: ArrayLike<number>, levels: readonly Level[], most: number): Level[] {
  const n = wanted.length;
  const order = Array.from({ length: n }, (_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
  const sum = new Float64Array(n + 1);
  const square = new Float64Array(n + 1);
  for (const [i, at] of order.entries()) {
    sum[i + 1] = sum[i]! + wanted[at]!;
    square[i + 1] = square[i]! + wanted[at]! ** 2;
  }
  const group = (from: number, to: number) => {
    const count = to - from;
    const mean = (sum[to]! - sum[from]!) / count;
    const level = nearestLevel(levels, mean);
    const cost = square[to]! - square[from]! - 2 * level.force * (sum[to]! - sum[from]!) + count * level.force ** 2;
    return { level, cost };
  };
  const cost = Array.from({ length: most + 1 }, () => new Float64Array(n + 1).fill(Number.POSITIVE_INFINITY));
  const cut = Array.from({ length: most + 1 }, () => new Int32Array(n + 1));
  cost[0]![0] = 0;
  for (let k = 1; k <= most; k += 1) {
    for (let to = 1; to <= n; to += 1) {
      for (let from = k - 1; from < to; from += 1) {
        const total = cost[k - 1]![from]! + group(from, to).cost;
        if (total < cost[k]![to]!) {
          cost[k]![to] = total;
          cut[k]![to] = from;
        }
      }
    }
  }
  let k = 1;
  for (let i = 2; i <= most; i += 1) if (cost[i]![n]! < cost[k]![n]! * (1 - 1e-9)) k = i;
  const result = new Array<Level>(n);
  for (let to = n; to > 0; ) {
    const from = cut[k]![to]!;
    const { level } = group(from, to);
    for (let i = from; i < to; i += 1) result[order[i]!] = level;
    to = from;
    k -= 1;
  }
  return result;
}

/** The level whose force is nearest; levels sorted by force. */
export function nearestLevel(levels: readonly Level[], force: number): Level {
  let best = levels[0]!;
  for (const level of levels) if (Math.abs(level.force - force) < Math.abs(best.force - force)) best = level;
  return best;
}
