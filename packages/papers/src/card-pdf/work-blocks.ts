import type { StepPlan } from '@clampwright/core';
import type { UnitSystem, Words } from '@clampwright/words';
import { jointDrawing } from '../drawing/index.ts';
import type { CardBlock } from '../page/card/card-block.ts';
import { toolsOf } from '../page/card/card-bolts.tsx';
import type { CardRow } from '../page/card/card-rows.ts';
import { recordFields } from '../page/card/record-fields.tsx';
import { boxedSteps, type Cell } from '../page/card/tick-layout.ts';
import { positionsText, spoken } from '../page/spoken.ts';
import { drawScene } from '../pdf/draw-scene.ts';
import { baseOf } from '../typeset/set-text.ts';
import { ENGLISH_ALONE, inBoth, onOneLine, said, type Text } from '../typeset/text.ts';
import type { DrawBlock } from './draw-block.ts';
import { moved, type Pen, say, tickBox } from './pen.ts';

type Work = 'steps' | 'drawing' | 'ticks' | 'record';

/** What a crew works by and fills in. */
export const WORK_BLOCKS: { readonly [K in Work]: DrawBlock<Extract<CardBlock, { kind: K }>> } = {
  steps: (pen, { rows }, joint, units) => {
    pen.canvas.line({ x: pen.x, y: pen.y }, { x: pen.x + pen.width, y: pen.y }, { stroke: 'ink', line: 0.5 });
    const several = new Set(joint.subgroups.flatMap(toolsOf)).size > 1;
    return rows.reduce((y, row) => y + stepRow(moved(pen, y), row, units, several), 0);
  },
  drawing: (pen, { height, overleaf }, joint) => {
    const key = pen.width > 110 ? 'right' : 'across';
    const whole = jointDrawing(joint, pen.width, height, key, pen.languages);
    // with its key under it, the drawing takes what the key leaves
    const scene =
      key === 'across' && whole.height > height
        ? jointDrawing(joint, pen.width, Math.max(30, 2 * height - whole.height), key, pen.languages)
        : whole;
    const scale = Math.min(1, height / scene.height);
    drawScene(pen.canvas, scene, { x: pen.x + (pen.width * (1 - scale)) / 2, y: pen.y }, scale);
    const order = ({ label }: Words) =>
      `${label('card.sequence', { pattern: label(`pattern.${joint.sequence.pattern}`) })}. ${overleaf ? label('card.list-back') : ''}`.trim();
    return scene.height * scale + 1.5 + say(moved(pen, scene.height * scale + 1.5), order, { size: pen.size.text, face: 'bold' });
  },
  ticks: (pen, { lines, perLine }, joint) => {
    const steps = boxedSteps(joint);
    // two lines of boxes explain themselves
    const numbered = joint.sequence.list.length > 2 * perLine;
    let y = say(pen, said('card.list'), { size: pen.size.small });
    y += say(
      moved(pen, y),
      ({ label, step }) => `${label('card.boxes', { steps: steps.map(({ name }, at) => `${at + 1} ${step(name)}`).join(', ') })}.`,
      { size: pen.size.small, face: 'bold' },
    );
    if (joint.sequence.list.some(({ length }) => length > 1)) y += say(moved(pen, y), said('card.together'), { size: pen.size.small });
    return lines.reduce(
      (down, line) =>
        down +
        tickLine(moved(pen, down), line, { boxes: steps.length, perLine, numbered, longest: '0'.repeat(String(joint.boltCount).length) }),
      y + 0.8,
    );
  },
  record: (pen, _, joint) => {
    const gutter = 4;
    const rule = (at: Pen, name: Text, height: number) => {
      say(at, name, { size: pen.size.small - 0.4 });
      at.canvas.line({ x: at.x, y: at.y + height }, { x: at.x + at.width, y: at.y + height }, { stroke: 'ink', line: 0.25 });
    };
    const fields = recordFields(joint);
    const texts = (part: 'pairs' | 'signatures') =>
      fields[part].map(
        (_, i): Text =>
          (words) =>
            recordFields(joint, words)[part][i]!,
      );
    const two = pen.languages.length > 1;
    let y = 0;
    const inRows = (names: readonly Text[], across: readonly number[], height: number) => {
      let at = 0;
      for (const count of across) {
        const width = (pen.width - (count - 1) * gutter) / count;
        for (const [i, name] of names.slice(at, at + count).entries()) rule(moved(pen, y, i * (width + gutter), width), name, height);
        at += count;
        y += height + 0.6;
      }
    };
    const pairs = texts('pairs');
    // operator and second person; date, start and end, serial: short ones three in a row
    inRows(pairs, [2, 3, ...Array.from({ length: Math.ceil((pairs.length - 5) / 2) }, () => 2)], two ? 9.4 : 8);
    rule(moved(pen, y), (words) => recordFields(joint, words).remarks, 13);
    y += 13.6;
    inRows(texts('signatures'), [2], 10);
    return y;
  },
};

/** One step: its name, the setting largest, how it ends, and a box. */
function stepRow(pen: Pen, { number, name, order, settings }: CardRow, units: UnitSystem, severalTools: boolean): number {
  const { size, canvas } = pen;
  const box = size.box + 1.4;
  const left = moved(pen, 1.2, 0, size.name);
  let named = say(left, ({ step }) => `${number} ${step(name)}`, { size: size.title, face: 'bold' });
  if (order === 'circular') named += say(moved(left, named), said('step.circular'), { size: size.small });
  const right = moved(pen, 1, size.name + 1.5, pen.width - size.name - 1.5 - box - 1.5);
  let y = 0;
  for (const [at, { positions, step }] of settings.entries()) {
    if (settings.length > 1)
      y += say(moved(right, y), said('joint.bolts', { positions: positionsText(positions) }), { size: size.text, face: 'bold' });
    y += bigSetting(moved(right, y), step, units, besideText(step, units, severalTools, pen.languages[0]));
    const next = settings[at + 1]?.step;
    const [english] = ENGLISH_ALONE;
    if (next === undefined || english.end(next.end, units) !== english.end(step.end, units))
      y += say(moved(right, y), ({ end }) => `■ ${end(step.end, units)}`, { size: size.text, face: 'bold' });
  }
  const height = Math.max(named, y) + 2;
  tickBox(pen, pen.x + pen.width - box, pen.y + (height - box) / 2, box);
  canvas.line({ x: pen.x, y: pen.y + height }, { x: pen.x + pen.width, y: pen.y + height }, { stroke: 'ink', line: 0.25 });
  return height;
}

/** The setting as large as it can be, the angle where the step ends at a mark; torque and tool beside it, or under it where it is long. */
function bigSetting(pen: Pen, step: StepPlan, units: UnitSystem, beside: string): number {
  const { size, canvas } = pen;
  const whole = (words: Words) =>
    step.setting ? words.setting(step) : step.end.kind === 'mark at angle' ? spoken(units, words).angle(step.end.angle) : undefined;
  const text = whole(pen.languages[0]);
  if (text === undefined) return say(pen, ({ setting }) => setting(step), { size: size.title, face: 'bold' });
  const natural = canvas.widthOf(text, { size: size.big, face: 'bold' });
  const fitted = Math.max(size.title, Math.min(size.big, (0.985 * size.big * pen.width) / natural));
  const taken = say(pen, (words) => whole(words)!, { size: fitted, face: 'bold' });
  const also: Text = step.setting ? beside : ({ setting }) => setting(step);
  const [first, second] = inBoth(also, pen.languages);
  if (first === '') return taken;
  const style = { size: size.text, ...(step.setting ? {} : { face: 'bold' as const }) };
  const left = natural + 2.5;
  if (second !== undefined || left + canvas.widthOf(first, style) > pen.width) return taken + say(moved(pen, taken), also, style);
  canvas.text({ x: pen.x + left, y: pen.y + baseOf(fitted) * 0.94 }, first, style);
  return taken;
}

const besideText = (step: StepPlan, units: UnitSystem, severalTools: boolean, words: Words) =>
  [
    step.torque && spoken(units, words).torque(step.setting?.torque ?? step.torque.wanted),
    severalTools && step.setting && words.label('step.tool', { tool: step.setting.tool }),
  ]
    .filter(Boolean)
    .join(', ');

/** A smaller box cannot be ticked with a marker, mm. */
const LEAST_BOX = 3;

/** Boxes of the bolts of one line, in tightening order; the large number is the bolt's own. */
function tickLine(
  pen: Pen,
  line: readonly Cell[],
  {
    boxes,
    perLine,
    numbered,
    longest,
  }: { readonly boxes: number; readonly perLine: number; readonly numbered: boolean; readonly longest: string },
): number {
  const { canvas, size } = pen;
  const width = pen.width / perLine;
  canvas.line({ x: pen.x, y: pen.y }, { x: pen.x + pen.width, y: pen.y }, { stroke: 'ink', line: 0.2 });
  const turns = numbered
    ? say(moved(pen, 0.3), onOneLine(said('card.line', { from: line[0]!.turn, to: line.at(-1)!.turn }), pen.languages), {
        size: size.small - 1.4,
      })
    : 0.6;
  const large = perLine === 5;
  const numberWidth = large ? canvas.widthOf(longest, { size: size.number, face: 'bold' }) + 0.8 : 0;
  const fits = (across: number) => (width - numberWidth - 1.6) / across - 0.4;
  // all boxes of a bolt in a row where they can be ticked with a glove on, else in two
  const across = large ? (fits(boxes) >= LEAST_BOX || boxes < 3 ? boxes : Math.ceil(boxes / 2)) : 2;
  const side = large ? Math.min(size.box, fits(across)) : 3.3;
  const top = turns + 0.6;
  const rows = Math.ceil(boxes / across);
  for (const [i, { bolt, joined }] of line.entries()) {
    const x = pen.x + i * width + (joined ? 0.6 : 0.2);
    if (joined) canvas.box({ x: pen.x + i * width - 1, y: pen.y + top }, 0.9, side * rows + 2, { fill: 'ink' });
    const numbered = large ? { x: x + numberWidth - 0.8, y: pen.y + top + side - 0.5 } : { x, y: pen.y + top + 3 };
    canvas.text(numbered, String(bolt), { size: large ? size.number : size.text + 1, face: 'bold', anchor: large ? 'end' : 'start' });
    for (let box = 0; box < boxes; box += 1) {
      const at = {
        x: x + numberWidth + (box % across) * (side + 0.4),
        y: pen.y + top + (large ? 0 : 3.8) + Math.floor(box / across) * (side + 0.4),
      };
      tickBox(pen, at.x, at.y, side);
      canvas.text({ x: at.x + 0.5, y: at.y + 1.9 }, String(box + 1), { size: 5, ink: 'quiet' });
    }
  }
  return top + (large ? 0 : 3.8) + rows * (side + 0.4) + 1;
}
