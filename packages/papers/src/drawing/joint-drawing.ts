import type { JointPlan } from '@clampwright/core';
import { ENGLISH_ALONE, type Languages } from '../typeset/text.ts';
import { drawGroup, groupHeight } from './group.ts';
import { drawKey } from './key.ts';
import { type Drawn, drawRing } from './ring.ts';
import type { Scene } from './scene.ts';

const GUTTER = 4;
const KEY_WIDTH = 44;
/** Letters of the key, mm: larger under a drawing that a narrow screen shows smaller; across the foot of one that is printed as it is. */
const KEY_SIZE = { right: 3, under: 3.8, across: 2.8 } as const;

/**
 * The bolts of a joint: hexagons with their position, the turn of each in a black box beside it, bolt 1 by a wedge, and a key.
 * The key stands at the right of a wide drawing, under a tall one, or across its foot in two columns. `most`: the height the bolts may take; a flat group takes less.
 */
export function jointDrawing(
  joint: JointPlan,
  width: number,
  most: number,
  key: keyof typeof KEY_SIZE,
  languages: Languages = ENGLISH_ALONE,
): Scene {
  const { label } = languages[0];
  const room = key === 'right' ? width - KEY_WIDTH - GUTTER : width;
  const { layout } = joint;
  const height = layout.kind === 'group' ? groupHeight(joint, layout.bolts, room, most) : most;
  const drawn: Drawn =
    layout.kind === 'group'
      ? drawGroup(joint, layout.bolts, { x: 0, y: 0, width: room, height })
      : drawRing(joint, { x: room / 2, y: height / 2 }, Math.min(room, height) / 2 - 0.5, label('drawing.bolt-one'));
  const told = {
    where: layout.kind,
    hasDatum: joint.datum !== undefined,
    turns: joint.sequence.list.length,
    seenFrom: joint.datum?.viewedFrom,
  };
  const at = key === 'right' ? { x: room + GUTTER, y: 1 } : { x: 2, y: height + (key === 'across' ? 2 : GUTTER) };
  const legend = drawKey(
    { at, width: key === 'right' ? KEY_WIDTH : width - 4, size: KEY_SIZE[key], columns: key === 'across' ? 2 : 1 },
    drawn,
    told,
    languages,
  );
  return {
    width,
    height: Math.max(height, at.y + legend.height),
    title: label('drawing.title', { tag: joint.tag, bolts: joint.boltCount }),
    shapes: [...drawn.shapes, ...legend.shapes],
  };
}
