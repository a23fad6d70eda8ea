import type { HeadingMeans } from '@clampwright/papers';

/** `HEADING=MEANING` of a command line; a heading may hold an equals sign itself. `undefined`: one of them is neither. */
export function meansOf(maps: readonly string[]): readonly HeadingMeans[] | undefined {
  const means = maps.map((map) => ({
    heading: map.slice(0, Math.max(0, map.lastIndexOf('='))).trim(),
    means: map.slice(map.lastIndexOf('=') + 1).trim(),
  }));
  return means.every((one) => one.heading !== '' && one.means !== '') ? means : undefined;
}
