import type { JointPlan, SubgroupPlan } from '@clampwright/core';
import { ENGLISH_WORDS, type UnitSystem, type Words } from '@clampwright/words';
import { fastenerText, handlingText } from '../bolt-line.ts';
import { positionsText, spoken } from '../spoken.ts';

/** The fasteners of a joint, one entry for each subgroup: which bolts, what they are, how they are handled. */
export const boltEntries = (
  joint: JointPlan,
  units: UnitSystem,
  words: Words = ENGLISH_WORDS,
): { readonly head: string; readonly small: readonly string[] }[] =>
  joint.subgroups.map((subgroup) => ({
    head: `${
      joint.subgroups.length > 1
        ? `${words.label('joint.bolts', { positions: positionsText(subgroup.positions) })}: `
        : `${subgroup.positions.length} × `
    }${fastenerText(subgroup, units, words)}`,
    small: [
      [handlingText(subgroup, units, words), ...toolTexts(subgroup, words), ...preloadText(subgroup, units, words)].join(' · '),
      ...turnText(subgroup, units, words),
    ],
  }));

/** The entries as a page prints them. */
export function CardBolts({ joint, units }: { readonly joint: JointPlan; readonly units: UnitSystem }) {
  return (
    <div>
      {boltEntries(joint, units).map(({ head, small }) => (
        <p className="bolts" key={head}>
          {head}
          {small.map((text) => (
            <small key={text}>{text}</small>
          ))}
        </p>
      ))}
    </div>
  );
}

export const toolsOf = ({ tightening }: SubgroupPlan): string[] => [
  ...new Set((tightening?.steps ?? []).flatMap(({ setting }) => setting?.tool ?? [])),
];

const toolTexts = (subgroup: SubgroupPlan, { label }: Words) => toolsOf(subgroup).map((tool) => label('step.tool', { tool }));

/** What the crew will see the part turn: a reading far off is looked at again, never refused. */
const turnText = ({ tightening }: SubgroupPlan, units: UnitSystem, words: Words) => {
  const { rotation } = tightening ?? {};
  const { angle } = spoken(units, words);
  return rotation
    ? [words.label('card.turn', { expected: angle(rotation.expected), low: angle(rotation.low), high: angle(rotation.high) })]
    : [];
};

const preloadText = ({ tightening }: SubgroupPlan, units: UnitSystem, words: Words) =>
  tightening ? [words.label('card.preload', { preload: spoken(units, words).force(tightening.target.value) })] : [];
