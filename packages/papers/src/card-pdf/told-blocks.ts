import type { CardBlock } from '../page/card/card-block.ts';
import { boltEntries } from '../page/card/card-bolts.tsx';
import { reactionText } from '../page/card/card-head.tsx';
import { roundsText } from '../page/card/card-rounds.tsx';
import { positionsText } from '../page/spoken.ts';
import { wayText } from '../page/way-text.ts';
import { uninked } from '../pdf/canvas.ts';
import { inBoth, said, type Text } from '../typeset/text.ts';
import type { DrawBlock } from './draw-block.ts';
import { moved, type Pen, say, tickBox } from './pen.ts';
import { pictogram } from './pictograms.ts';

type Told = 'head' | 'reasons' | 'bolts' | 'checks' | 'cautions' | 'rounds';

/** What a card says: each draws itself at the pen and gives the height it took. */
export const TOLD_BLOCKS: { readonly [K in Told]: DrawBlock<Extract<CardBlock, { kind: K }>> } = {
  head: (pen, _, joint, units) => {
    const { size } = pen;
    const datum = line(pen, said('card.datum'), ({ datum: told }) => told(joint.datum));
    tickBox(pen, pen.x + 0.2, pen.y + datum + 0.4, 2.8);
    const confirmed = say(moved(pen, datum, 4.4), said('card.confirmed'), { size: size.text, face: 'bold' });
    const known = reactionText(joint, units) !== undefined;
    const down = datum + Math.max(confirmed, 3.6) + 0.6;
    return known ? down + line(moved(pen, down), said('card.reaction'), (words) => reactionText(joint, units, words)!) : down;
  },
  reasons: (pen, { reasons }, _, units) => {
    const pad = 1.6;
    const inner = moved(pen, pad, pad, pen.width - 2 * pad);
    let y = 0;
    for (const reason of reasons) {
      y += say(moved(inner, y), ({ says }) => says(reason, units), { size: pen.size.text, face: 'bold' });
      y += say(moved(inner, y), ({ remedy }) => remedy(reason, units), { size: pen.size.text }) + 0.6;
    }
    pen.canvas.box({ x: pen.x, y: pen.y }, pen.width, y + 2 * pad - 0.6, { stroke: 'ink', line: 0.5 });
    return y + 2 * pad - 0.6;
  },
  bolts: (pen, _, joint, units) => {
    let y = 0;
    for (const [at, { small }] of boltEntries(joint, units).entries()) {
      y += say(moved(pen, y), (words) => boltEntries(joint, units, words)[at]!.head, { size: pen.size.title, face: 'bold' });
      for (const i of small.keys())
        y += say(moved(pen, y), (words) => boltEntries(joint, units, words)[at]!.small[i]!, { size: pen.size.small });
      y += 0.8;
    }
    return y;
  },
  checks: (pen, _, { checks }) =>
    inColumns(pen, said('checks.title'), checks, ({ check }, at) => {
      tickBox(at, at.x + 0.1, at.y + 0.5, 2.6);
      return Math.max(3.4, say(moved(at, 0, 4), said(`checks.${check}`), { size: pen.size.small }));
    }),
  cautions: (pen, { codes }) =>
    inColumns(pen, said('card.cautions'), codes, (code, at) => {
      pictogram(at.canvas, code, { x: at.x, y: at.y + 0.3 }, 5);
      return Math.max(
        5.6,
        say(moved(at, 0, 6.4), ({ caution }) => caution(code), { size: pen.size.small }),
      );
    }),
  rounds: (pen, { interaction }, { boltCount }) => {
    if (interaction.mode === 'one setting a round')
      return say(pen, (words) => roundsText(interaction, boltCount, words), { size: pen.size.text });
    let y = say(pen, said('interaction.card-several'), { size: pen.size.text, face: 'bold' });
    for (const [at, { way, settings }] of interaction.rounds.entries()) {
      y += say(moved(pen, y), (words) => `${at + 1}. ${wayText(way, boltCount, words)}`, { size: pen.size.text });
      for (const { text, bolts } of settings)
        y += say(
          moved(pen, y, 5),
          ({ label, settingText }) => `${settingText(text)} ${label('interaction.card-settings', { bolts: positionsText(bolts) })}`,
          {
            size: pen.size.text,
          },
        );
    }
    return y;
  },
};

/** A name and what belongs to it. */
function line(pen: Pen, name: Text, text: Text): number {
  const style = { size: pen.size.text, face: 'bold' } as const;
  const [named] = inBoth(name, pen.languages);
  const wide = Math.max(pen.size.name * 0.62, pen.canvas.widthOf(named, style) + 1.5);
  say(moved(pen, 0, 0, wide), name, style);
  return say(moved(pen, 0, wide), text, { size: pen.size.text }) + 0.4;
}

/** Short things under a heading in two columns, down the left one and on in the right one, so that neither is much longer. */
function inColumns<T>(pen: Pen, title: Text, items: readonly T[], one: (item: T, at: Pen) => number): number {
  const gutter = 4;
  const width = (pen.width - gutter) / 2;
  const top = say(pen, title, { size: pen.size.text, face: 'bold' }) + 0.6;
  const heights = items.map((item) => one(item, { ...moved(pen, 0, 0, width), canvas: uninked(pen.canvas) }) + 0.5);
  const sum = (some: readonly number[]) => some.reduce((all, height) => all + height, 0);
  const longest = (left: number) => Math.max(sum(heights.slice(0, left)), sum(heights.slice(left)));
  const inLeft = heights.reduce((best, _, at) => (longest(at + 1) < longest(best) ? at + 1 : best), 0);
  for (const [column, some] of [items.slice(0, inLeft), items.slice(inLeft)].entries())
    some.reduce((y, item) => y + one(item, moved(pen, y, column * (width + gutter), width)) + 0.5, top);
  return top + longest(inLeft);
}
