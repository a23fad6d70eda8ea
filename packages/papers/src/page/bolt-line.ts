import type { SubgroupPlan } from '@clampwright/core';
import { ENGLISH_WORDS, type UnitSystem, type Words } from '@clampwright/words';
import { spoken } from './spoken.ts';

/** The fastener as it is asked for at the store: `HV M24 × 95 mm, 10.9, lot K2`. */
export function fastenerText({ system, size, grade, length, lot }: SubgroupPlan, units: UnitSystem, words: Words = ENGLISH_WORDS): string {
  const long = length === undefined ? '' : ` × ${spoken(units, words).length(length)}`;
  return [`${system === 'plain' ? '' : `${system} `}${size}${long}`, grade, lot !== undefined && words.label('joint.lot', { lot })]
    .filter(Boolean)
    .join(', ');
}

/** What is clamped, the socket, which part turns. */
export const handlingText = (
  { clampThickness, acrossFlats, turned }: SubgroupPlan,
  units: UnitSystem,
  words: Words = ENGLISH_WORDS,
): string =>
  [
    clampThickness !== undefined && words.label('joint.clamped', { thickness: spoken(units, words).length(clampThickness) }),
    acrossFlats !== undefined && words.label('joint.flats', { flats: spoken(units, words).length(acrossFlats) }),
    words.label(`turned.${turned}`),
  ]
    .filter(Boolean)
    .join(' · ');
