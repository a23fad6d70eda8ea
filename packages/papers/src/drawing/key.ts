import { inBoth, type Languages, said, type Text } from '../typeset/text.ts';
import { arrowHead, wedge } from './arrow.ts';
import { hexagon } from './hexagon.ts';
import { CAP, centred, wrap } from './letters.ts';
import type { Drawn } from './ring.ts';
import type { At, Role, Shape } from './scene.ts';
import { turnBox } from './turn-box.ts';

export interface Told {
  /** where the turn of a bolt stands: outside a ring, above a bolt of a group */
  readonly where: 'ring' | 'group';
  readonly hasDatum: boolean;
  readonly turns: number;
  readonly seenFrom: string | undefined;
}

const INDENT = 9;
/** Share of the size in which the second language stands. */
const SECOND = 0.84;

/** What the signs of the drawing mean, line under line from `at`; `height` is what it takes. */
export function drawKey(
  at: At,
  width: number,
  size: number,
  drawn: Drawn,
  told: Told,
  languages: Languages,
): { readonly shapes: readonly Shape[]; readonly height: number } {
  const middle = Math.max(2.2, size * 0.7);
  const shapes: Shape[] = [];
  let y = at.y;
  const row = (sign: ((centre: At) => Shape[]) | undefined, text: Text, fill: Role = 'ink', bold = false) => {
    const indent = sign ? INDENT : 0;
    if (sign) shapes.push(...sign({ x: at.x + 3.6, y: y + middle }));
    let down = 0;
    for (const [i, own] of inBoth(text, languages).entries()) {
      const em = i === 0 ? size : size * SECOND;
      for (const line of wrap(own ?? '', em, width - indent, 4)) {
        shapes.push({
          kind: 'text',
          at: { x: at.x + indent, y: y + middle + (size * CAP) / 2 + down },
          text: line,
          size: em,
          anchor: 'start',
          fill: i === 0 ? fill : 'quiet',
          bold: bold && i === 0,
        });
        down += em * 1.3;
      }
    }
    y += Math.max(sign ? 5.8 : 0, down + 1.2);
  };
  if (told.seenFrom !== undefined) row(undefined, said('drawing.seen', { from: told.seenFrom }), 'ink', true);
  if (told.hasDatum) {
    row((centre) => [wedge({ x: centre.x, y: centre.y - 2 }, 0, 4)], said('drawing.bolt-one'));
    row(
      ({ x, y: level }) => [
        { kind: 'line', from: { x: x - 3, y: level }, to: { x: x + 2, y: level }, paint: { stroke: 'ink', width: 0.6 } },
        arrowHead({ x: x + 3.2, y: level }, Math.PI / 2, 2.8),
      ],
      said('drawing.numbers-run'),
    );
  } else row(undefined, said('drawing.no-datum'), 'ink', true);
  if (drawn.numbersInside)
    row(
      (centre) => [hexagon(centre, 4.6, { stroke: 'ink', fill: 'paper', width: 0.3 }), centred(centre, '7', 3, 'ink', true)],
      said('drawing.position'),
    );
  else
    row(
      (centre) => [
        hexagon({ x: centre.x - 1.6, y: centre.y }, 2.4, { stroke: 'ink', fill: 'paper', width: 0.3 }),
        centred({ x: centre.x + 2, y: centre.y }, '7', 3, 'ink', true),
      ],
      said(drawn.allNumbers ? 'drawing.position-inside' : 'drawing.position-some'),
    );
  if (drawn.turnsShown > 0)
    row(
      (centre) => [turnBox({ at: centre, text: '3', size: 3 })],
      drawn.turnsShown === told.turns
        ? said('drawing.turn', { where: told.where })
        : said('drawing.turn-some', { where: told.where, shown: drawn.turnsShown, all: told.turns }),
    );
  row(undefined, said(drawn.toScale ? 'drawing.to-scale' : 'drawing.not-to-scale'), 'quiet');
  return { shapes, height: y - at.y };
}
