import { label } from '@clampwright/words';
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

/** What the signs of the drawing mean, line under line from `at`; `height` is what it takes. */
export function drawKey(
  at: At,
  width: number,
  size: number,
  drawn: Drawn,
  told: Told,
): { readonly shapes: readonly Shape[]; readonly height: number } {
  const leading = size * 1.3;
  const middle = Math.max(2.2, size * 0.7);
  const shapes: Shape[] = [];
  let y = at.y;
  const row = (sign: ((centre: At) => Shape[]) | undefined, text: string, fill: Role = 'ink', bold = false) => {
    const indent = sign ? INDENT : 0;
    const lines = wrap(text, size, width - indent, 4);
    if (sign) shapes.push(...sign({ x: at.x + 3.6, y: y + middle }));
    for (const [i, line] of lines.entries()) {
      shapes.push({
        kind: 'text',
        at: { x: at.x + indent, y: y + middle + (size * CAP) / 2 + i * leading },
        text: line,
        size,
        anchor: 'start',
        fill,
        bold,
      });
    }
    y += Math.max(sign ? 5.8 : 0, lines.length * leading + 1.2);
  };
  if (told.seenFrom !== undefined) row(undefined, label('drawing.seen', { from: told.seenFrom }), 'ink', true);
  if (told.hasDatum) {
    row((centre) => [wedge({ x: centre.x, y: centre.y - 2 }, 0, 4)], label('drawing.bolt-one'));
    row(
      ({ x, y: level }) => [
        { kind: 'line', from: { x: x - 3, y: level }, to: { x: x + 2, y: level }, paint: { stroke: 'ink', width: 0.6 } },
        arrowHead({ x: x + 3.2, y: level }, Math.PI / 2, 2.8),
      ],
      label('drawing.numbers-run'),
    );
  } else row(undefined, label('drawing.no-datum'), 'ink', true);
  if (drawn.numbersInside)
    row(
      (centre) => [hexagon(centre, 4.6, { stroke: 'ink', fill: 'paper', width: 0.3 }), centred(centre, '7', 3, 'ink', true)],
      label('drawing.position'),
    );
  else
    row(
      (centre) => [
        hexagon({ x: centre.x - 1.6, y: centre.y }, 2.4, { stroke: 'ink', fill: 'paper', width: 0.3 }),
        centred({ x: centre.x + 2, y: centre.y }, '7', 3, 'ink', true),
      ],
      label(drawn.allNumbers ? 'drawing.position-inside' : 'drawing.position-some'),
    );
  if (drawn.turnsShown > 0)
    row(
      (centre) => [turnBox({ at: centre, text: '3', size: 3 })],
      drawn.turnsShown === told.turns
        ? label('drawing.turn', { where: told.where })
        : label('drawing.turn-some', { where: told.where, shown: drawn.turnsShown, all: told.turns }),
    );
  row(undefined, label(drawn.toScale ? 'drawing.to-scale' : 'drawing.not-to-scale'), 'quiet');
  return { shapes, height: y - at.y };
}
