import type { JointPlan, Point } from '@clampwright/core';
import { arrowHead, wedge } from './arrow.ts';
import { hexagon } from './hexagon.ts';
import { centred } from './letters.ts';
import { type BoltLook, inkOn, lightOr, ringsOf } from './look.ts';
import { placeTurns } from './place-turns.ts';
import type { Drawn } from './ring.ts';
import type { At, Shape } from './scene.ts';
import { boxHeight, boxWidth, type TurnBox } from './turn-box.ts';
import { everyNth, turnsOf } from './turns.ts';

export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Room beside the part, mm; above or below it, where bolt 1's wedge and arrow stand; and on the other edge. */
const MARGIN = 7;
const DATUM_ROOM = 10;
const OTHER_EDGE = 1;
const FONT = 3.4;

/** A group of bolts to scale in its plate; `frame`: the paper it may take. With a look bolts say what was done, and no turns. */
export function drawGroup(joint: JointPlan, points: readonly Point[], frame: Frame, look?: BoltLook): Drawn {
  const acrossFlats = flatsOf(joint);
  const { scale, at, plate } = fitInto(points, acrossFlats, frame);
  const centres = points.map(at);
  const pitch = smallest(centres);
  const flats = Math.min(acrossFlats * scale, 0.62 * pitch, 13);
  const numberSize = Math.min(5, flats * 0.5);
  const numbersInside = numberSize >= 1.9;
  const labelled = everyNth(points.length, pitch, numbersInside ? 0 : 2.4);
  const placed = placeTurns(
    look ? [] : turnsOf(joint.sequence.list),
    Math.min(FONT, Math.max(2.2, pitch * 0.22)),
    above(centres, flats),
    clearOf(centres, flats),
  );
  return {
    shapes: [
      { kind: 'polyline', closed: true, points: plate, paint: { stroke: 'quiet', width: 0.3 } },
      ...centres.map((centre, i) => hexagon(centre, flats, { ...lightOr(look, i + 1), stroke: 'ink', width: i === 0 ? 0.6 : 0.3 })),
      ...centres.flatMap((centre, i) =>
        labelled(i + 1) ? [centred(centre, String(i + 1), Math.max(1.9, numberSize), inkOn(look, i + 1), true)] : [],
      ),
      ...ringsOf(
        look,
        centres.map((_, i) => i + 1),
        (bolt) => centres[bolt - 1]!,
        flats,
      ),
      ...placed.shapes,
      ...(joint.datum ? datumMarks(centres, plate, flats) : []),
    ],
    numbersInside: true,
    allNumbers: centres.every((_, i) => labelled(i + 1)),
    turnsShown: placed.shown,
    toScale: Math.abs(flats - acrossFlats * scale) < 0.02 * flats,
  };
}

/** Height a group needs at that width, so that no empty paper is left about it. */
export function groupHeight(joint: JointPlan, points: readonly Point[], width: number, most: number): number {
  const edge = 2.2 * flatsOf(joint);
  const [wide, high] = [spread(points.map(({ x }) => x)) + edge, spread(points.map(({ y }) => y)) + edge];
  return Math.min(most, Math.ceil((high * (width - 2 * MARGIN)) / wide + DATUM_ROOM + OTHER_EDGE));
}

/** Is bolt 1 nearer to the upper edge? Its wedge then points down at it from there. */
const nearTop = (y: number, top: number, bottom: number): boolean => y - top <= bottom - y;
const flatsOf = ({ subgroups }: JointPlan) => Math.max(1, ...subgroups.map((one) => one.acrossFlats ?? 0));
const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);

function fitInto(points: readonly Point[], acrossFlats: number, frame: Frame) {
  const edge = 1.1 * acrossFlats;
  const [left, right] = [Math.min(...points.map(({ x }) => x)) - edge, Math.max(...points.map(({ x }) => x)) + edge];
  const [top, bottom] = [Math.min(...points.map(({ y }) => y)) - edge, Math.max(...points.map(({ y }) => y)) + edge];
  const room = { width: frame.width - 2 * MARGIN, height: frame.height - DATUM_ROOM - OTHER_EDGE };
  const scale = Math.min(room.width / (right - left), room.height / (bottom - top));
  const [width, height] = [(right - left) * scale, (bottom - top) * scale];
  const above = nearTop(points[0]?.y ?? top, top, bottom) ? DATUM_ROOM : OTHER_EDGE;
  const origin = { x: frame.x + (frame.width - width) / 2, y: frame.y + above + (room.height - height) / 2 };
  const at = ({ x, y }: { x: number; y: number }): At => ({ x: origin.x + (x - left) * scale, y: origin.y + (y - top) * scale });
  const plate = [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ].map(at);
  return { scale, at, plate };
}

/** Right above its bolt. */
const above =
  (centres: readonly At[], flats: number) =>
  (bolt: number, box: Pick<TurnBox, 'text' | 'size'>): At | undefined => {
    const centre = centres[bolt - 1];
    return centre && { x: centre.x, y: centre.y - flats / 2 - 0.4 - boxHeight(box) / 2 };
  };

/** A box may not lie on any bolt. */
const clearOf = (centres: readonly At[], flats: number) => (box: TurnBox) =>
  centres.every(
    ({ x, y }) =>
      Math.abs(x - box.at.x) >= boxWidth(box) / 2 + flats / Math.sqrt(3) || Math.abs(y - box.at.y) >= boxHeight(box) / 2 + flats / 2,
  );

function smallest(centres: readonly At[]): number {
  let least = 40;
  for (const [i, a] of centres.entries()) {
    for (const b of centres.slice(i + 1)) {
      const apart = Math.hypot(a.x - b.x, a.y - b.y);
      if (apart > 0) least = Math.min(least, apart);
    }
  }
  return least;
}

/** A wedge from above the plate down to bolt 1's column, and an arrow along the plate's edge from bolt 1 towards bolt 2. */
function datumMarks(centres: readonly At[], plate: readonly At[], flats: number): Shape[] {
  const [one, two] = centres;
  const top = plate[0]!.y;
  if (!one) return [];
  const down = nearTop(one.y, top, plate[2]!.y);
  const clear = flats / 2 + 5;
  const edge = down ? Math.min(top, one.y - clear) : Math.max(plate[2]!.y, one.y + clear);
  const shapes: Shape[] = [wedge({ x: one.x, y: edge + (down ? -0.6 : 0.6) }, down ? Math.PI : 0, 5)];
  if (!two || Math.hypot(two.x - one.x, two.y - one.y) < 1) return shapes;
  const side = Math.sign(two.x - one.x);
  if (side === 0) {
    const x = plate[0]!.x - 3;
    return [...shapes, line({ x, y: one.y }, { x, y: two.y }), arrowHead({ x, y: two.y }, two.y > one.y ? Math.PI : 0, 3)];
  }
  const y = down ? edge - 3 : edge + 3;
  const from = { x: one.x + side * 3.6, y };
  const to = { x: Math.max(two.x * side, (one.x + side * 12) * side) * side, y };
  return [...shapes, line(from, to), arrowHead(to, (side * Math.PI) / 2, 3)];
}

const line = (from: At, to: At): Shape => ({ kind: 'line', from, to, paint: { stroke: 'ink', width: 0.6 } });
