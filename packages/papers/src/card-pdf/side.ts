import type { JointPlan, Plan } from '@clampwright/core';
import type { Words } from '@clampwright/words';
import type { CardBlock } from '../page/card/card-block.ts';
import type { Canvas } from '../pdf/canvas.ts';
import { drawQr } from '../pdf/draw-qr.ts';
import { leadingOf } from '../typeset/set-text.ts';
import { type Languages, onOneLine, type Text } from '../typeset/text.ts';
import type { CardSize } from './card-size.ts';
import { cardCode, shortCode } from './codes.ts';
import type { DrawBlock } from './draw-block.ts';
import { moved, type Pen, say } from './pen.ts';
import { TOLD_BLOCKS } from './told-blocks.ts';
import { WORK_BLOCKS } from './work-blocks.ts';

const BLOCKS = { ...TOLD_BLOCKS, ...WORK_BLOCKS };

/** Room between blocks, mm. */
export const GAP = 2.2;

export const drawBlock = (pen: Pen, block: CardBlock, joint: JointPlan, plan: Plan): number =>
  (BLOCKS[block.kind] as DrawBlock<CardBlock>)(pen, block, joint, plan.job.units);

/** A pen at the upper left of a side whose corner lies at `x`. */
export const penOf = (canvas: Canvas, size: CardSize, languages: Languages, x = 0): Pen => ({
  canvas,
  size,
  languages,
  x: x + size.margin,
  y: size.margin,
  width: size.width - 2 * size.margin,
});

interface SideNumber {
  readonly side: number;
  readonly sides: number;
}

/** The head of a side: the tag large on every one, so that no sheet is ever without its joint; the first with title and code. */
export function sideHead(pen: Pen, plan: Plan, joint: JointPlan, { side, sides }: SideNumber): number {
  const { size, canvas, languages } = pen;
  const { job, engine } = plan;
  const first = side === 1;
  canvas.box({ x: pen.x, y: pen.y }, pen.width, 1.8, { fill: 'ink' });
  const code = first && joint.verdict !== 'stop' ? size.code : 0;
  if (code > 0) {
    drawQr(canvas, cardCode(joint), { x: pen.x + pen.width - code, y: pen.y + 2.2 }, code);
    canvas.text({ x: pen.x + pen.width - code / 2, y: pen.y + 4 + code }, shortCode(joint), {
      size: size.small,
      face: 'bold',
      anchor: 'middle',
    });
  }
  const text = moved(pen, 2.6, 0, pen.width - code - (code > 0 ? 2 : 24));
  let y = say(text, joint.tag, { size: first ? size.tag : size.tag * 0.8, face: 'bold' });
  if (first) y += say(moved(text, y), joint.title, { size: size.title, face: 'bold' });
  const where = ({ label }: Words) => `${label('card.name')}, ${label('card.side', { side, sides })}`;
  const issue = languages[0].label('card.plan', { job: job.title, date: job.workDate, engine });
  if (first) {
    // job and day stand once: only what a language says otherwise stands in both
    const told: Text = (words) => [words.term(joint.rule.title), words === languages[0] && issue, where(words)].filter(Boolean).join(' · ');
    y += say(moved(text, y), told, { size: size.small });
  } else {
    const small = { size: size.small } as const;
    const right = { x: pen.x + pen.width, y: pen.y + 5.2 };
    canvas.text(right, onOneLine(where, languages), { ...small, anchor: 'end' });
    // beside the tag where it fits, else under it
    const beside = pen.width - canvas.widthOf(joint.tag, { size: size.tag * 0.8, face: 'bold' }) - 6;
    if (canvas.widthOf(issue, small) <= beside)
      canvas.text({ x: right.x, y: right.y + leadingOf(size.small) }, issue, { ...small, anchor: 'end' });
    else y += say(moved(text, y, 0, pen.width), issue, small);
  }
  return Math.max(2.6 + y, code > 0 ? code + 5 : 0) + GAP;
}

/** One side of a card. */
export function cardSide(pen: Pen, plan: Plan, joint: JointPlan, blocks: readonly CardBlock[], number: SideNumber): void {
  let y = sideHead(pen, plan, joint, number);
  for (const block of blocks) y += drawBlock(moved(pen, y), block, joint, plan) + GAP;
}
