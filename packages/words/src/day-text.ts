import type { Plan, SupplyPlan } from '@clampwright/core';
import { label } from './page-words.ts';

const MOST_NAMED = 6;

/** Tags in a row, the rest counted: `A, B and 3 more`. */
export const fewTags = (tags: readonly string[]): string =>
  tags.length > MOST_NAMED
    ? label('sums.and-more', { tags: tags.slice(0, MOST_NAMED).join(', '), more: tags.length - MOST_NAMED })
    : tags.join(', ');

const hours = (minutes: number) => (minutes / 60).toFixed(1);

/** Time, energy, batteries and crews of the joints that may be tightened, a line each. */
export function dayLines({ sums: { minutes, energy, supply, crews } }: Pick<Plan, 'sums'>): string[] {
  return [
    label('sums.effort', { hours: hours(minutes), energy: (energy / 1000).toFixed(0) }),
    ...(supply ? supplyLines(supply) : []),
    ...(crews.length > 1
      ? crews.map(({ crew, joints, minutes: own }) => label('sums.crew', { crew, joints: fewTags(joints), hours: hours(own) }))
      : []),
  ];
}

function supplyLines({ turns, more, chargers, notToBegin }: SupplyPlan): string[] {
  return [
    ...turns.map(({ serial, pulls, joints, chance }) =>
      label('sums.battery', { serial, pulls, joints: fewTags(joints), chance: { dimension: 'percent', value: chance } }),
    ),
    more === null ? label('sums.more-none') : label('sums.more', { more, chargers }),
    ...(notToBegin.length > 0 ? [label('sums.not-to-begin', { joints: fewTags(notToBegin) })] : []),
    label('sums.drawn'),
  ];
}
