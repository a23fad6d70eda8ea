import type { JointPlan, SubgroupPlan } from '@clampwright/core';
import { label, type UnitSystem } from '@clampwright/words';
import { fastenerText, handlingText } from '../bolt-line.ts';
import { positionsText, spoken } from '../spoken.ts';

/** The fasteners of a joint, one entry for each subgroup: which bolts, what they are, how they are handled. */
export const boltEntries = (joint: JointPlan, units: UnitSystem): { readonly head: string; readonly small: readonly string[] }[] =>
  joint.subgroups.map((subgroup) => ({
    head: `${
      joint.subgroups.length > 1
        ? `${label('joint.bolts', { positions: positionsText(subgroup.positions) })}: `
        : `${subgroup.positions.length} × `
    }${fastenerText(subgroup, units)}`,
    small: [
      [handlingText(subgroup, units), ...toolTexts(subgroup), ...preloadText(subgroup, units)].join(' · '),
      ...turnText(subgroup, units),
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

const toolTexts = (subgroup: SubgroupPlan) => toolsOf(subgroup).map((tool) => label('step.tool', { tool }));

/** What the crew will see the part turn: a reading far off is looked at again, never refused. */
const turnText = ({ tightening }: SubgroupPlan, units: UnitSystem) => {
  const { rotation } = tightening ?? {};
  const { angle } = spoken(units);
  return rotation ? [label('card.turn', { expected: angle(rotation.expected), low: angle(rotation.low), high: angle(rotation.high) })] : [];
};

const preloadText = ({ tightening }: SubgroupPlan, units: UnitSystem) =>
  tightening ? [label('card.preload', { preload: spoken(units).force(tightening.target.value) })] : [];
