import { centred, textWidth } from './letters.ts';
import type { At, Shape } from './scene.ts';

/** The turn at which a bolt comes: always in a black box with light figures, so that it is never taken for a position. */
export interface TurnBox {
  readonly at: At;
  readonly text: string;
  readonly size: number;
}

export const boxWidth = ({ text, size }: Pick<TurnBox, 'text' | 'size'>): number =>
  Math.max(size * 1.25, textWidth(text, size) + size * 0.5);
export const boxHeight = ({ size }: Pick<TurnBox, 'size'>): number => size * 1.25;

export function turnBox(box: TurnBox): Shape {
  const [w, h] = [boxWidth(box) / 2, boxHeight(box) / 2];
  const { x, y } = box.at;
  const corners = [
    { x: x - w, y: y - h },
    { x: x + w, y: y - h },
    { x: x + w, y: y + h },
    { x: x - w, y: y + h },
  ];
  return {
    kind: 'group',
    shapes: [
      { kind: 'polyline', closed: true, points: corners, paint: { fill: 'ink' } },
      centred(box.at, box.text, box.size, 'paper', true),
    ],
  };
}

/** Do two boxes lie on or too near each other? */
export const collide = (a: TurnBox, b: TurnBox, gap = 0.5): boolean =>
  Math.abs(a.at.x - b.at.x) < (boxWidth(a) + boxWidth(b)) / 2 + gap && Math.abs(a.at.y - b.at.y) < (boxHeight(a) + boxHeight(b)) / 2 + gap;
