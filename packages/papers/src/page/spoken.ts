import type { Millimetre, Newton, NewtonMillimetre, Radian } from '@clampwright/core';
import { ENGLISH_WORDS, type UnitSystem } from '@clampwright/words';

/** Quantities as the job's readers say them. */
export const spoken = (units: UnitSystem, { measure: say } = ENGLISH_WORDS) => ({
  force: (value: Newton) => say({ dimension: 'force', value }, units),
  torque: (value: NewtonMillimetre) => say({ dimension: 'torque', value }, units),
  length: (value: Millimetre) => say({ dimension: 'length', value }, units),
  angle: (value: Radian) => say({ dimension: 'angle', value }, units),
  share: (value: number) => say({ dimension: 'percent', value }, units),
});

/** Bolt numbers as people write them: `1–4, 7`. */
export function positionsText(positions: readonly number[]): string {
  const sorted = [...positions].sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const one of sorted) {
    const last = runs.at(-1);
    if (last && one === last[1] + 1) last[1] = one;
    else runs.push([one, one]);
  }
  return runs.map(([from, to]) => (from === to ? String(from) : to === from + 1 ? `${from}, ${to}` : `${from}–${to}`)).join(', ');
}
