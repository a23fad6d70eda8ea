import type { JointPlan } from '@clampwright/core';
import { inBoth, type Languages, said, type Text } from '../typeset/text.ts';
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
export function workDrawing(joint: JointPlan, look: BoltLook, width: number, most: number, languages: Languages): Scene {
  const room = width - KEY.width - KEY.gutter;
  const { layout } = joint;
  const height = layout.kind === 'group' ? groupHeight(joint, layout.bolts, room, most) : most;
  const drawn: Drawn =
    layout.kind === 'group'
      ? drawGroup(joint, layout.bolts, { x: 0, y: 0, width: room, height }, look)
      : drawRing(joint, { x: room / 2, y: height / 2 }, Math.min(room, height) / 2 - 0.5, languages[0].label('drawing.bolt-one'), look);
  const key = keyAt({ x: room + KEY.gutter, y: 2 }, joint.datum?.viewedFrom, languages);
  return {
    width,
    height: Math.max(height, key.height + 2),
    title: languages[0].label('state.drawing', { tag: joint.tag, bolts: joint.boltCount }),
    shapes: [...drawn.shapes, ...key.shapes],
  };
}

function keyAt(
  { x, y: top }: At,
  seenFrom: string | undefined,
  languages: Languages,
): { readonly shapes: readonly Shape[]; readonly height: number } {
  let y = top;
  const shapes: Shape[] = [];
  const say = (text: Text, indent: number, bold = false) => {
    for (const [i, own] of inBoth(text, languages).entries()) {
      const size = i === 0 ? KEY.size : KEY.size * 0.84;
      for (const line of wrap(own ?? '', size, KEY.width - indent, 3)) {
        shapes.push({
          kind: 'text',
          at: { x: x + indent, y: y + KEY.size * CAP },
          text: line,
          size,
          anchor: 'start',
          fill: i === 0 ? 'ink' : 'quiet',
          bold: bold && i === 0,
        });
        y += size * 1.3;
      }
    }
    y += 2;
  };
  if (seenFrom !== undefined) say(said('drawing.seen', { from: seenFrom }), 0, true);
  for (const { paint, ringed, text } of SIGNS) {
    const centre = { x: x + 3, y: y + 0.9 };
    shapes.push(hexagon(centre, 3.4, paint));
    if (ringed) shapes.push({ kind: 'circle', centre, radius: 2.5, paint: { stroke: 'mark', width: 0.7 } });
    say(said(text), KEY.indent);
  }
  return { shapes, height: y - top };
}
