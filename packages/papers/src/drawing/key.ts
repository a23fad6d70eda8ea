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

/** Where a key stands and how: its letters in mm, its rows in one column or two. */
export interface KeyPlace {
  readonly at: At;
  readonly width: number;
  readonly size: number;
  readonly columns: 1 | 2;
}

interface Row {
  readonly sign?: (centre: At) => Shape[];
  readonly text: Text;
  readonly fill?: Role;
  readonly bold?: boolean;
}
interface Laid {
  readonly shapes: readonly Shape[];
  readonly height: number;
}

/** What the signs of the drawing mean, row under row; `height` is what it takes. */
export function drawKey({ at, width, size, columns }: KeyPlace, drawn: Drawn, told: Told, languages: Languages): Laid {
  const rows = rowsOf(drawn, told);
  const shapes: Shape[] = [];
  const perColumn = Math.ceil(rows.length / columns);
  let height = 0;
  for (let column = 0; column < columns; column += 1) {
    let y = 0;
    for (const row of rows.slice(column * perColumn, (column + 1) * perColumn)) {
      const laid = layRow(row, { x: at.x + (column * width) / columns, y: at.y + y }, width / columns - (columns - 1) * 2, size, languages);
      shapes.push(...laid.shapes);
      y += laid.height;
    }
    height = Math.max(height, y);
  }
  return { shapes, height };
}

function layRow({ sign, text, fill = 'ink', bold = false }: Row, { x, y }: At, width: number, size: number, languages: Languages): Laid {
  const middle = Math.max(2.2, size * 0.7);
  const indent = sign ? INDENT : 0;
  const shapes: Shape[] = sign ? sign({ x: x + 3.6, y: y + middle }) : [];
  let down = 0;
  for (const [i, own] of inBoth(text, languages).entries()) {
    const em = i === 0 ? size : size * SECOND;
    for (const line of wrap(own ?? '', em, width - indent, 4)) {
      shapes.push({
        kind: 'text',
        at: { x: x + indent, y: y + middle + (size * CAP) / 2 + down },
        text: line,
        size: em,
        anchor: 'start',
        fill: i === 0 ? fill : 'quiet',
        bold: bold && i === 0,
      });
      down += em * 1.3;
    }
  }
  return { shapes, height: Math.max(sign ? 5.8 : 0, down + 1.2) };
}

function rowsOf(drawn: Drawn, told: Told): Row[] {
  const rows: Row[] = [];
  const row = (sign: Row['sign'] | undefined, text: Text, fill: Role = 'ink', bold = false) =>
    rows.push({ ...(sign ? { sign } : {}), text, fill, bold });
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
  return rows;
}
