import type { JointPlan, Plan } from '@clampwright/core';
import { jointCode } from '../card-pdf/codes.ts';
import type { At } from '../drawing/index.ts';
import type { Canvas } from '../pdf/canvas.ts';
import { drawQr } from '../pdf/draw-qr.ts';
import { BLACK_INK, openPdf } from '../pdf/index.ts';
import { openSheets } from '../pdf/open-sheets.ts';
import { languagesOf, type PaperOptions } from '../pdf/paper-options.ts';
import { breakLines } from '../typeset/break-lines.ts';
import { setLines } from '../typeset/flow.ts';
import { leadingOf, secondStyle } from '../typeset/set-text.ts';
import { inBoth, type Languages, said, type Text } from '../typeset/text.ts';

/** Labels on a sheet of A4, two by five; or one label after the other, as a roll printer takes them. */
export type TagPaper = 'sheet' | 'roll';

const LABEL = { width: 99, height: 54 } as const;
const SHEET = { width: 210, height: 297, left: 6, top: 13.5, across: 2, down: 5 } as const;
const PAD = 4;
const CODE = 28;

/** Tags for the steel: which joint, where bolt 1 is, which way numbers run, and a code that stays the same for every issue of the plan. PDF. */
export async function tagsPdf(plan: Plan, options: PaperOptions & { readonly paper: TagPaper }): Promise<Uint8Array> {
  const { letters, organisation, made, progress, paper } = options;
  const languages = languagesOf(options);
  const { label, language } = languages[0];
  const pdf = openPdf(letters, {
    title: `${label('paper.subject.tags')}: ${plan.job.title}`,
    subject: label('paper.subject.tags'),
    engine: plan.engine,
    language,
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
    drawTag(sheets.canvas, at, plan, joint, languages);
    progress?.(i + 1, plan.joints.length);
  }
  if (plan.joints.length === 0) sheets.turn(paper === 'roll' ? LABEL : SHEET);
  return pdf.bytes();
}

function drawTag(canvas: Canvas, at: At, plan: Plan, joint: JointPlan, languages: Languages): void {
  const [x, width] = [at.x + PAD, LABEL.width - 2 * PAD];
  const text = width - CODE - 2;
  let y = at.y + PAD - 1;
  const end = at.y + LABEL.height - PAD - leadingOf(7);
  const say = (words: Text, size: number, face: 'regular' | 'bold', most: number) => {
    for (const [i, own] of inBoth(words, languages).entries()) {
      const style = i === 0 ? { size, face } : secondStyle({ size, face });
      // below the code the whole width is free
      const room = y > at.y + PAD + CODE + (joint.verdict === 'stop' ? 8 : 0) ? width : text;
      const lines = breakLines(own ?? '', room, (one) => canvas.widthOf(one, style)).slice(0, most);
      if (y + lines.length * leadingOf(style.size) <= end) y += setLines(canvas, lines, { x, y }, style);
    }
  };
  const natural = canvas.widthOf(joint.tag, { size: 30, face: 'bold' });
  say(joint.tag, Math.min(30, (0.985 * 30 * text) / natural), 'bold', 1);
  say(joint.title, 10, 'bold', 2);
  y += 1;
  if (joint.datum) {
    say(said('tag.bolt-one', { where: joint.datum.boltOne }), 9, 'regular', 2);
    const { direction, viewedFrom: from } = joint.datum;
    say(({ label, term }) => label('tag.direction', { direction: term(direction), from }), 9, 'regular', 2);
  } else say(said('drawing.no-datum'), 9, 'bold', 2);
  for (const { positions, size, grade } of joint.subgroups.slice(0, 2))
    say(said('tag.bolts', { count: positions.length, size, grade }), 9, 'regular', 1);
  drawQr(canvas, jointCode(plan.job, joint), { x: x + width - CODE + 2, y: at.y + PAD - 2 }, CODE);
  if (joint.verdict === 'stop') {
    const words = inBoth(said('tag.stop'), languages);
    const box = { x: x + width - CODE + 2, y: at.y + PAD + CODE - 1 };
    // to the right margin, as the rule below
    const wide = CODE - 2;
    canvas.box(box, wide, words.length === 1 ? 7 : 9.4, { fill: 'ink' });
    for (const [i, word] of words.entries()) {
      const most = i === 0 ? 8 : 6.6;
      const size = Math.min(most, (most * (wide - 2)) / canvas.widthOf(word!, { size: most, face: 'bold' }));
      canvas.text({ x: box.x + wide / 2, y: box.y + (words.length === 1 ? 4.6 : 4 + i * 3.6) }, word!, {
        size,
        face: 'bold',
        ink: 'paper',
        anchor: 'middle',
      });
    }
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
