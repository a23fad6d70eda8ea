import type { SubgroupPlan } from '@clampwright/core';
import { label, turnedText, type UnitSystem } from '@clampwright/words';
import { spoken } from './spoken.ts';

/** The fastener as it is asked for at the store: `HV M24 × 95 mm, 10.9, lot K2`. */
export function fastenerText({ system, size, grade, length, lot }: SubgroupPlan, units: UnitSystem): string {
  const long = length === undefined ? '' : ` × ${spoken(units).length(length)}`;
  return [`${system === 'plain' ? '' : `${system} `}${size}${long}`, grade, lot !== undefined && label('joint.lot', { lot })]
    .filter(Boolean)
    .join(', ');
}

/** What is clamped, the socket, which part turns. */
export const handlingText = ({ clampThickness, acrossFlats, turned }: SubgroupPlan, units: UnitSystem): string =>
  [
    clampThickness !== undefined && label('joint.clamped', { thickness: spoken(units).length(clampThickness) }),
    acrossFlats !== undefined && label('joint.flats', { flats: spoken(units).length(acrossFlats) }),
    turnedText(turned),
  ]
    .filter(Boolean)
    .join(' · ');
