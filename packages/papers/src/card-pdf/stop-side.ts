import { type JointPlan, levelOf, type Notice, type Plan } from '@clampwright/core';
import { said } from '../typeset/text.ts';
import { moved, type Pen, say } from './pen.ts';
import { sideHead } from './side.ts';

/** The word, its lead, and what stands under the reasons, mm. */
const FRAME = 62;

/** A joint that stops has no settings on its card: only the word, the reasons and what would mend them. */
export function stopSides(measure: Pen, plan: Plan, joint: JointPlan): ((pen: Pen) => void)[] {
  const { units } = plan.job;
  const reasonAt = (pen: Pen, reason: Notice): number => {
    pen.canvas.line({ x: pen.x, y: pen.y }, { x: pen.x + pen.width, y: pen.y }, { stroke: 'ink', line: 0.3 });
    let y = 1.2 + say(moved(pen, 1.2), said(`level.${levelOf(reason.code)}`), { size: pen.size.small });
    y += say(moved(pen, y), ({ says }) => says(reason, units), { size: pen.size.title, face: 'bold' });
    return y + say(moved(pen, y), ({ remedy }) => remedy(reason, units), { size: pen.size.title }) + 1.6;
  };
  const room = measure.size.height - 2 * measure.size.margin - FRAME;
  const spread: Notice[][] = [[]];
  let left = room;
  for (const reason of joint.reasons) {
    const height = reasonAt(measure, reason);
    if (height > left && spread.at(-1)!.length > 0) {
      spread.push([]);
      left = room;
    }
    spread.at(-1)!.push(reason);
    left -= height;
  }
  return spread.map((reasons, at) => (pen) => {
    let y = sideHead(pen, plan, joint, { side: at + 1, sides: spread.length });
    const word = { size: pen.size.big * 1.15, face: 'bold', ink: 'paper' } as const;
    const inner = moved(pen, y + 3, 4, pen.width - 8);
    const height = say({ ...inner, canvas: measure.canvas }, said('card.stop'), word) + 6;
    pen.canvas.box({ x: pen.x, y: pen.y + y }, pen.width, height, { fill: 'ink' });
    say(inner, said('card.stop'), word);
    y += height + 2.5;
    y += say(moved(pen, y), said('card.stop-lead'), { size: pen.size.text }) + 1.5;
    for (const reason of reasons) y += reasonAt(moved(pen, y), reason);
    y += say(moved(pen, y + 1), ({ label, datum }) => `${label('card.datum')}: ${datum(joint.datum)}`, { size: pen.size.text }) + 2.5;
    say(moved(pen, y), said('card.stop-end'), { size: pen.size.text, face: 'bold' });
  });
}
