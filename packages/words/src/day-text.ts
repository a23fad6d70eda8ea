import type { Plan, SupplyPlan } from '@clampwright/core';
import { ENGLISH_WORDS, type Words } from './words.ts';

const MOST_NAMED = 6;

/** Tags in a row, the rest counted: `A, B and 3 more`. */
export const fewTags = (tags: readonly string[], words: Words = ENGLISH_WORDS): string =>
  tags.length > MOST_NAMED
    ? words.label('sums.and-more', { tags: tags.slice(0, MOST_NAMED).join(', '), more: tags.length - MOST_NAMED })
    : tags.join(', ');

const hours = (minutes: number) => Number((minutes / 60).toFixed(1));

/** Time, energy, batteries and crews of the joints that may be tightened, a line each. */
export function dayLines({ sums: { minutes, energy, supply, crews } }: Pick<Plan, 'sums'>, words: Words = ENGLISH_WORDS): string[] {
  const { label } = words;
  return [
    label('sums.effort', { hours: hours(minutes), energy: (energy / 1000).toFixed(0) }),
    ...(supply ? supplyLines(supply, words) : []),
    ...(crews.length > 1
      ? crews.map(({ crew, joints, minutes: own }) => label('sums.crew', { crew, joints: fewTags(joints, words), hours: hours(own) }))
      : []),
  ];
}

function supplyLines({ turns, more, chargers, notToBegin }: SupplyPlan, words: Words): string[] {
  const { label } = words;
  return [
    ...turns.map(({ serial, pulls, joints, chance }) =>
      label('sums.battery', { serial, pulls, joints: fewTags(joints, words), chance: { dimension: 'percent', value: chance } }),
    ),
    more === null ? label('sums.more-none') : label('sums.more', { more, chargers }),
    ...(notToBegin.length > 0 ? [label('sums.not-to-begin', { joints: fewTags(notToBegin, words) })] : []),
    label('sums.drawn'),
  ];
}
