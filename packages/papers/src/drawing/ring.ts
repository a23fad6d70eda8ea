import type { JointPlan } from '@clampwright/core';
import { arrowHead, wedge } from './arrow.ts';
import { hexagon } from './hexagon.ts';
import { centred, textWidth } from './letters.ts';
import { type BoltLook, inkOn, lightOr, ringsOf } from './look.ts';
import { placeTurns } from './place-turns.ts';
import { type At, around, type Shape } from './scene.ts';
import { boxHeight, boxWidth } from './turn-box.ts';
import { everyNth, turnsOf } from './turns.ts';

/** What a drawing of bolts says of itself, for its key. */
export interface Drawn {
  readonly shapes: readonly Shape[];
  readonly numbersInside: boolean;
  readonly allNumbers: boolean;
  readonly turnsShown: number;
  readonly toScale: boolean;
}

const FULL = 2 * Math.PI;
const SMALLEST_HEXAGON = 1.8;
/** A number inside its hexagon needs this much across flats to be read at arm's length. */
const READABLE_HEXAGON = 5.2;
const GAP = 0.7;
/** Above this count the hexagons are small and their numbers stand inside the ring. */
const MANY = 60;

/** A ring of bolts, bolt 1 at the top, numbered as the datum says. `reach`: half of the square it may take, mm of paper; `boltOne`: what bolt 1 is called. With a look bolts say what was done, and no turns. */
export function drawRing(joint: JointPlan, centre: At, reach: number, boltOne: string, look?: BoltLook): Drawn {
  const { boltCount: count, datum } = joint;
  const way = datum?.direction === 'counter-clockwise' ? -1 : 1;
  const angleOf = (bolt: number) => (way * FULL * (bolt - 1)) / Math.max(1, count);
  const turns = look ? [] : turnsOf(joint.sequence.list);
  const size = count > 48 ? 2.9 : count > 24 ? 3.1 : 3.5;
  const boxed = { text: String(Math.max(1, Math.min(turns.length, 99))), size };
  const outside = boxWidth(boxed) + GAP;
  const first = hexagonSize(joint, (reach - outside) * 0.9);
  const radius = reach - outside - 0.85 * first.flats;
  const { flats, toScale } = hexagonSize(joint, radius);
  const edge = 0.85 * flats;

  const numbersInside = flats >= READABLE_HEXAGON && count < 100;
  const inner = radius - edge - GAP;
  const labelled = numbersInside ? () => true : everyNth(count, (FULL * inner) / count, textWidth(String(count), size) + 1.4);
  const bolts = Array.from({ length: count }, (_, i) => i + 1);
  const hexagons = bolts.map((bolt) =>
    hexagon(around(centre, radius, angleOf(bolt)), flats, { ...lightOr(look, bolt), stroke: 'ink', width: bolt === 1 ? 0.6 : 0.3 }),
  );
  const numbers = bolts
    .filter((bolt) => labelled(bolt) && (numbersInside || bolt !== 1))
    .map((bolt) => {
      const text = String(bolt);
      const at = numbersInside
        ? around(centre, radius, angleOf(bolt))
        : besideRing(centre, inner, angleOf(bolt), textWidth(text, size), size);
      return centred(at, text, numbersInside ? Math.min(4.4, flats * 0.5) : size, numbersInside ? inkOn(look, bolt) : 'ink', true);
    });
  const placed = placeTurns(turns, size, (bolt, box) =>
    besideRing(centre, -(radius + edge + GAP), angleOf(bolt), boxWidth(box), boxHeight(box)),
  );
  return {
    shapes: [
      { kind: 'circle', centre, radius: radius + edge, paint: { stroke: 'quiet', width: 0.25 } },
      { kind: 'circle', centre, radius: radius - edge, paint: { stroke: 'quiet', width: 0.25 } },
      ...hexagons,
      ...numbers,
      ...ringsOf(look, bolts, (bolt) => around(centre, radius, angleOf(bolt)), flats),
      ...placed.shapes,
      ...(datum ? datumMarks(centre, inner, way, boltOne) : []),
    ],
    numbersInside,
    allNumbers: bolts.every(labelled),
    turnsShown: placed.shown,
    toScale,
  };
}

/** Centre of a label that touches the circle from inside; from outside where the radius is given negative. */
function besideRing(centre: At, radius: number, angle: number, width: number, height: number): At {
  const half = (Math.abs(Math.sin(angle)) * width + Math.abs(Math.cos(angle)) * height) / 2;
  return around(centre, radius < 0 ? -radius + half : radius - half, angle);
}

function hexagonSize({ layout, boltCount, subgroups }: JointPlan, radius: number): { readonly flats: number; readonly toScale: boolean } {
  const pitch = 2 * radius * Math.sin(Math.PI / Math.max(2, boltCount));
  const most = Math.min(0.72 * pitch, 0.36 * radius);
  const acrossFlats = Math.max(0, ...subgroups.map((one) => one.acrossFlats ?? 0));
  const circle = layout.kind === 'ring' ? layout.circle : undefined;
  const true_ = circle === undefined || acrossFlats === 0 ? undefined : (acrossFlats * 2 * radius) / circle;
  // a number that can be read is worth more than a bolt to scale
  const least = boltCount > MANY ? SMALLEST_HEXAGON : Math.min(READABLE_HEXAGON + 0.2, 0.66 * pitch);
  const flats = Math.min(most, Math.max(SMALLEST_HEXAGON, least, true_ ?? 0.5 * pitch));
  return { flats, toScale: true_ !== undefined && Math.abs(flats - true_) < 0.02 * flats };
}

/** Bolt 1 by a wedge from inside, and an arrow the way numbers run. */
function datumMarks(centre: At, inner: number, way: 1 | -1, boltOne: string): Shape[] {
  const length = Math.min(5, inner * 0.22);
  const tip = around(centre, inner, 0);
  const radius = inner * 0.66;
  const size = Math.min(3.4, inner * 0.2);
  const start = Math.max(0.42, (textWidth(boltOne, size) / 2 + 1.6) / radius);
  const [from, to] = [way * start, way * (start + 0.83)];
  return [
    wedge(tip, 0, length),
    centred(around(centre, inner - length - 2.6, 0), boltOne, size, 'ink', true),
    { kind: 'arc', centre, radius, from, to, paint: { stroke: 'ink', width: 0.6 } },
    arrowHead(around(centre, radius, to + way * 0.05), to + (way * Math.PI) / 2, Math.min(3.4, radius * 0.3)),
  ];
}
