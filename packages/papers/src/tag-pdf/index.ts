import type { JointPlan, Plan } from '@clampwright/core';
import { label } from '@clampwright/words';
import { jointCode } from '../card-pdf/codes.ts';
import type { At } from '../drawing/index.ts';
import type { Canvas } from '../pdf/canvas.ts';
import { drawQr } from '../pdf/draw-qr.ts';
import { BLACK_INK, openPdf } from '../pdf/index.ts';
import { openSheets } from '../pdf/open-sheets.ts';
import type { PaperOptions } from '../pdf/paper-options.ts';
import { breakLines } from '../typeset/break-lines.ts';
import { leadingOf, setLines } from '../typeset/flow.ts';

/** Labels on a sheet of A4, two by five; or one label after the other, as a roll printer takes them. */
export type TagPaper = 'sheet' | 'roll';

const LABEL = { width: 99, height: 54 } as const;
const SHEET = { width: 210, height: 297, left: 6, top: 13.5, across: 2, down: 5 } as const;
const PAD = 4;
const CODE = 28;

/** Tags for the steel: which joint, where bolt 1 is, which way numbers run, and a code that stays the same for every issue of the plan. PDF. */
export async function tagsPdf(
  plan: Plan,
  { letters, organisation, made, progress, paper }: PaperOptions & { readonly paper: TagPaper },
): Promise<Uint8Array> {
  const pdf = openPdf(letters, {
    title: `${label('paper.subject.tags')}: ${plan.job.title}`,
    subject: label('paper.subject.tags'),
    engine: plan.engine,
    made,
    ...(organisation ? { author: organisation.name } : {}),
  });
  const sheets = openSheets(pdf, BLACK_INK);
  const perPage = paper === 'roll' ? 1 : SHEET.across * SHEET.down;
  for (const [i, joint] of plan.joints.entries()) {
    const place = i % perPage;
    if (place === 0) sheets.turn(paper === 'roll' ? LABEL : SHEET);
    const at =
      paper === 'roll'
        ? { x: 0, y: 0 }
        : { x: SHEET.left + (place % SHEET.across) * LABEL.width, y: SHEET.top + Math.floor(place / SHEET.across) * LABEL.height };
    if (paper === 'sheet') sheets.canvas.box(at, LABEL.width, LABEL.height, { stroke: 'quiet', line: 0.1, dashed: true });
    drawTag(sheets.canvas, at, plan, joint);
    progress?.(i + 1, plan.joints.length);
  }
  if (plan.joints.length === 0) sheets.turn(paper === 'roll' ? LABEL : SHEET);
  return pdf.bytes();
}

function drawTag(canvas: Canvas, at: At, plan: Plan, joint: JointPlan): void {
  const [x, width] = [at.x + PAD, LABEL.width - 2 * PAD];
  const text = width - CODE - 2;
  let y = at.y + PAD - 1;
  const say = (words: string, size: number, face: 'regular' | 'bold', most: number, room = text) => {
    const lines = breakLines(words, room, (one) => canvas.widthOf(one, { size, face })).slice(0, most);
    y += setLines(canvas, lines, { x, y }, { size, face });
  };
  const natural = canvas.widthOf(joint.tag, { size: 30, face: 'bold' });
  say(joint.tag, Math.min(30, (0.985 * 30 * text) / natural), 'bold', 1);
  say(joint.title, 10, 'bold', 2);
  y += 1;
  if (joint.datum) {
    say(label('tag.bolt-one', { where: joint.datum.boltOne }), 9, 'regular', 2);
    say(label('tag.direction', { direction: joint.datum.direction, from: joint.datum.viewedFrom }), 9, 'regular', 2);
  } else say(label('drawing.no-datum'), 9, 'bold', 2);
  for (const { positions, size, grade } of joint.subgroups.slice(0, 2))
    say(label('tag.bolts', { count: positions.length, size, grade }), 9, 'regular', 1);
  drawQr(canvas, jointCode(plan.job, joint), { x: x + width - CODE + 2, y: at.y + PAD - 2 }, CODE);
  if (joint.verdict === 'stop') {
    const words = label('tag.stop');
    const box = { x: x + width - CODE + 2, y: at.y + PAD + CODE - 1 };
    canvas.box(box, CODE, 7, { fill: 'ink' });
    canvas.text({ x: box.x + CODE / 2, y: box.y + 5 }, words, { size: 8, face: 'bold', ink: 'paper', anchor: 'middle' });
  }
  const foot = at.y + LABEL.height - PAD - leadingOf(7) + 1;
  canvas.line({ x, y: foot - 1 }, { x: x + width, y: foot - 1 }, { stroke: 'ink', line: 0.2 });
  setLines(
    canvas,
    breakLines(`${plan.job.title}, ${plan.job.site}`, width, (one) => canvas.widthOf(one, { size: 7 })).slice(0, 1),
    { x, y: foot },
    { size: 7 },
  );
}
