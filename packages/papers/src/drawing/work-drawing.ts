import type { JointPlan } from '@clampwright/core';
import { label } from '@clampwright/words';
import { drawGroup, groupHeight } from './group.ts';
import { hexagon } from './hexagon.ts';
import { CAP, wrap } from './letters.ts';
import type { BoltLook } from './look.ts';
import { type Drawn, drawRing } from './ring.ts';
import type { At, Paint, Scene, Shape } from './scene.ts';

const KEY = { width: 44, gutter: 5, size: 2.9, indent: 8 } as const;
const SIGNS: readonly {
  readonly paint: Paint;
  readonly ringed?: true;
  readonly text: 'state.done' | 'state.begun' | 'state.open' | 'state.spoken-of';
}[] = [
  { paint: { stroke: 'ink', fill: 'ink', width: 0.3 }, text: 'state.done' },
  { paint: { stroke: 'ink', fill: 'paper', width: 0.3, dashed: true }, text: 'state.begun' },
  { paint: { stroke: 'ink', fill: 'paper', width: 0.3 }, text: 'state.open' },
  { paint: { stroke: 'ink', fill: 'paper', width: 0.3 }, ringed: true, text: 'state.spoken-of' },
];

/** The bolts of a joint as the log tells them: done, begun, open, and which something is said of. */
export function workDrawing(joint: JointPlan, look: BoltLook, width: number, most: number): Scene {
  const room = width - KEY.width - KEY.gutter;
  const { layout } = joint;
  const height = layout.kind === 'group' ? groupHeight(joint, layout.bolts, room, most) : most;
  const drawn: Drawn =
    layout.kind === 'group'
      ? drawGroup(joint, layout.bolts, { x: 0, y: 0, width: room, height }, look)
      : drawRing(joint, { x: room / 2, y: height / 2 }, Math.min(room, height) / 2 - 0.5, look);
  const key = keyAt({ x: room + KEY.gutter, y: 2 }, joint.datum?.viewedFrom);
  return {
    width,
    height: Math.max(height, key.height + 2),
    title: label('state.drawing', { tag: joint.tag, bolts: joint.boltCount }),
    shapes: [...drawn.shapes, ...key.shapes],
  };
}

function keyAt({ x, y: top }: At, seenFrom: string | undefined): { readonly shapes: readonly Shape[]; readonly height: number } {
  const leading = KEY.size * 1.3;
  let y = top;
  const shapes: Shape[] = [];
  const say = (text: string, indent: number, bold = false) => {
    for (const line of wrap(text, KEY.size, KEY.width - indent, 3)) {
      shapes.push({
        kind: 'text',
        at: { x: x + indent, y: y + KEY.size * CAP },
        text: line,
        size: KEY.size,
        anchor: 'start',
        fill: 'ink',
        bold,
      });
      y += leading;
    }
    y += 2;
  };
  if (seenFrom !== undefined) say(label('drawing.seen', { from: seenFrom }), 0, true);
  for (const { paint, ringed, text } of SIGNS) {
    const centre = { x: x + 3, y: y + 0.9 };
    shapes.push(hexagon(centre, 3.4, paint));
    if (ringed) shapes.push({ kind: 'circle', centre, radius: 2.5, paint: { stroke: 'mark', width: 0.7 } });
    say(label(text), KEY.indent);
  }
  return { shapes, height: y - top };
}
