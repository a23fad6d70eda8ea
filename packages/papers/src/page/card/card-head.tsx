import type { JointPlan } from '@clampwright/core';
import { datumText, ENGLISH_WORDS, label, type UnitSystem, type Words } from '@clampwright/words';
import { spoken } from '../spoken.ts';
import { CardLine } from './card-line.tsx';

/** Before anything is tightened: where bolt 1 is, where the arm bears. */
export function CardHead({ joint, units }: { readonly joint: JointPlan; readonly units: UnitSystem }) {
  const reaction = reactionText(joint, units);
  return (
    <div>
      <CardLine name={label('card.datum')}>
        {datumText(joint.datum)}{' '}
        <b className="whole">
          <span className="box small" /> {label('card.confirmed')}
        </b>
      </CardLine>
      {reaction !== undefined && <CardLine name={label('card.reaction')}>{reaction}</CardLine>}
    </div>
  );
}

/** Texts of the head, for the estimate of its height. */
export const headTexts = (joint: JointPlan, units: UnitSystem): readonly string[] => [
  `${datumText(joint.datum)}    ${label('card.confirmed')}`,
  reactionText(joint, units) ?? '',
];

/** Where the arm bears and how hard; a click wrench has none. */
export function reactionText({ subgroups, reactionPoint }: JointPlan, units: UnitSystem, words: Words = ENGLISH_WORDS): string | undefined {
  const forces = subgroups.flatMap(({ tightening }) => (tightening?.steps ?? []).flatMap(({ setting }) => setting?.reaction ?? []));
  const point = reactionPoint ?? words.label('card.point-unknown');
  const most = forces.reduce<(typeof forces)[number] | undefined>((a, b) => (a === undefined || b > a ? b : a), undefined);
  if (most === undefined && reactionPoint === undefined) return undefined;
  const where = most === undefined ? point : words.label('card.reaction-at', { force: spoken(units, words).force(most), point });
  return `${where}. ${words.label('reaction.side')}.`;
}
