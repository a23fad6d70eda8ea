import type { Draws } from './draws.ts';

/**
 * The first `count` of a shuffled list, every choice equally likely: Fisher and Yates, stopped early. The list is not changed.
 *
 * Source: Knuth, The Art of Computer Programming 2, 3.4.2, algorithm P.
 */
export function drawSome<T>(from: readonly T[], count: number, draws: Draws): T[] {
  const list = [...from];
  const most = Math.min(count, list.length);
  for (let i = 0; i < most; i += 1) {
    const other = i + Math.floor(draws.uniform() * (list.length - i));
    [list[i], list[other]] = [list[other]!, list[i]!];
  }
  return list.slice(0, most);
}
