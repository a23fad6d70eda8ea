import type { JointPlan, Plan } from '@clampwright/core';
import { layCard } from '../page/card/card-layout.ts';
import type { CardSheet } from '../page/card/card-sheet.ts';
import { uninked } from '../pdf/canvas.ts';
import { BLACK_INK, openPdf } from '../pdf/index.ts';
import { openSheets } from '../pdf/open-sheets.ts';
import { breath, languagesOf, type PaperOptions } from '../pdf/paper-options.ts';
import { CARD_SIZES, type CardPaper, type CardSize } from './card-size.ts';
import type { Pen } from './pen.ts';
import { cardSide, drawBlock, GAP, penOf, sideHead } from './side.ts';
import { stopSides } from './stop-side.ts';

export type { CardPaper } from './card-size.ts';

export interface CardsPdfOptions extends PaperOptions {
  readonly paper: CardPaper;
  /** only these joints */
  readonly tags?: readonly string[];
}

/**
 * The bolting cards as they are laminated and carried: A5 or A6 a side, or two sides of A5 on a sheet of A4. Black on white; the setting
 * largest; boxes for every bolt and step, so that the card alone is the record. PDF.
 */
export async function cardsPdf(plan: Plan, options: CardsPdfOptions): Promise<Uint8Array> {
  const { letters, organisation, made, progress, paper, tags } = options;
  const languages = languagesOf(options);
  const { label, language } = languages[0];
  const about = {
    title: `${label('card.title')}: ${plan.job.title}`,
    subject: label('paper.subject.cards'),
    engine: plan.engine,
    language,
    made,
  };
  const pdf = openPdf(letters, organisation ? { ...about, author: organisation.name } : about);
  const size: CardSize = CARD_SIZES[paper === 'A4' ? 'A5' : paper];
  const sheets = openSheets(pdf, BLACK_INK);
  const measure = penOf(uninked(sheets.canvas), size, languages);
  const joints = tags ? plan.joints.filter(({ tag }) => tags.includes(tag)) : plan.joints;
  const rest = breath();
  for (const [at, joint] of joints.entries()) {
    const sides = sidesOf(measure, plan, joint);
    for (const [i, draw] of sides.entries()) {
      const beside = paper === 'A4' && i % 2 === 1;
      if (!beside) sheets.turn(paper === 'A4' ? { width: 297, height: 210 } : size);
      if (i === 0) sheets.bookmark(`${joint.tag} ${joint.title}`);
      draw(penOf(sheets.canvas, size, languages, beside ? 148.5 : 0));
    }
    progress?.(at + 1, joints.length);
    await rest();
  }
  if (joints.length === 0) {
    sheets.turn(size);
    sheets.canvas.text({ x: size.margin, y: 20 }, label('card.none'), { size: size.title });
  }
  return pdf.bytes();
}

function sidesOf(measure: Pen, plan: Plan, joint: JointPlan): ((pen: Pen) => void)[] {
  if (joint.verdict === 'stop') return stopSides(measure, plan, joint);
  const laid = layCard(joint, plan.job.units, sheetOf(measure, plan, joint));
  return laid.map((blocks, at) => (pen) => cardSide(pen, plan, joint, blocks, { side: at + 1, sides: laid.length }));
}

/** What blocks take is measured by setting them where nothing is drawn. */
function sheetOf(measure: Pen, plan: Plan, joint: JointPlan): CardSheet {
  const { size } = measure;
  const further = sideHead(measure, plan, joint, { side: 2, sides: 9 });
  const first = sideHead(measure, plan, joint, { side: 1, sides: 9 });
  const empty = drawBlock(measure, { kind: 'ticks', lines: [], perLine: 5 }, joint, plan);
  return {
    room: size.height - 2 * size.margin - further - 1,
    firstHead: () => first - further,
    height: (block) => {
      const whole = drawBlock(measure, block, joint, plan);
      return block.kind === 'ticks' ? whole - empty : block.kind === 'drawing' ? block.height + size.text : whole;
    },
    opening: (kind) => GAP + (kind === 'ticks' ? empty : 0),
    leastDrawing: ({ layout }) => (layout.kind === 'group' ? size.leastDrawing : size.leastRing),
    mostDrawing: size.mostDrawing,
    perLine: size.perLine,
  };
}
