import { type JointPlan, levelOf, type Notice, type Plan } from '@clampwright/core';
import { datumText, label, levelText, remedy, says, type UnitSystem } from '@clampwright/words';
import { CardLine } from './card-line.tsx';
import { CardSide } from './card-side.tsx';
import { linesOf, SIDE_HEAD, SIDE_HEIGHT } from './page-sheet.ts';

/** The word, its lead and what stands under the reasons, mm. */
const FRAME = 58;

/** A joint that stops has no settings on its card: only the word, the reasons and what would mend them. */
export function StopCard({ plan, joint }: { readonly plan: Plan; readonly joint: JointPlan }) {
  const { units } = plan.job;
  const sides = spread(joint.reasons, units);
  return sides.map((reasons, at) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: a side is its number
    <CardSide key={at} plan={plan} joint={joint} side={at + 1} sides={sides.length} className="stop-card">
      <p className="stop-word">{label('card.stop')}</p>
      <p>{label('card.stop-lead')}</p>
      <ol className="reasons">
        {reasons.map((reason) => (
          <li key={JSON.stringify(reason)}>
            <small>{levelText(levelOf(reason.code))}</small>
            <b>{says(reason, units)}</b>
            {remedy(reason, units)}
          </li>
        ))}
      </ol>
      <CardLine name={label('card.datum')}>{datumText(joint.datum)}</CardLine>
      <p>{label('card.stop-end')}</p>
    </CardSide>
  ));
}

/** As many reasons on a side as it holds. */
function spread(reasons: readonly Notice[], units: UnitSystem): Notice[][] {
  const sides: Notice[][] = [[]];
  let left = SIDE_HEIGHT - SIDE_HEAD - FRAME;
  for (const reason of reasons) {
    const height = 8 + 5.2 * (linesOf(says(reason, units), 58) + linesOf(remedy(reason, units), 62));
    if (height > left && sides.at(-1)!.length > 0) {
      sides.push([]);
      left = SIDE_HEIGHT - SIDE_HEAD - FRAME;
    }
    sides.at(-1)!.push(reason);
    left -= height;
  }
  return sides;
}
