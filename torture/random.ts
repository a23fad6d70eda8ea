/** Random numbers by seed: the same day again for the same number. mulberry32, a 32-bit generator in the public domain. */
export function randomBy(seed: number) {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  return {
    next,
    /** whole number from 0 up to and without `end` */
    below: (end: number): number => Math.floor(next() * end),
    chance: (share: number): boolean => next() < share,
    one: <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!,
  };
}
export type Random = ReturnType<typeof randomBy>;
