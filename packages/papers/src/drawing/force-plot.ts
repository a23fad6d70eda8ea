import type { RoundPlan } from '@clampwright/core';
import { ENGLISH_WORDS } from '@clampwright/words';
import { centred, textWidth } from './letters.ts';
import { type At, around, type Scene, type Shape } from './scene.ts';

const SIZE = 2.6;
const STRIP = 17;
const GAP = 5;
const LEFT = 9;

/** What the forces of a joint are held against. */
export interface ForceTarget {
  readonly tag: string;
  readonly target: number;
  /** wanted largest |F − target|, share */
  readonly wanted: number;
}

const line = (from: At, to: At, dashed = false, width = 0.25): Shape => ({
  kind: 'line',
  from,
  to,
  paint: { stroke: dashed ? 'quiet' : 'ink', width, dashed },
});
const words = (at: At, text: string, anchor: 'start' | 'middle' | 'end' = 'start'): Shape => ({
  kind: 'text',
  at,
  text,
  size: SIZE,
  anchor,
  fill: 'ink',
});

/** Force of every bolt after each round, one strip a round: bars by bolt number, the target as a line, the wanted evenness dashed. */
export function forceStrips(
  rounds: readonly RoundPlan[],
  { tag, target, wanted }: ForceTarget,
  width: number,
  { label } = ENGLISH_WORDS,
): Scene {
  const most = Math.max(1.15, ...rounds.flatMap(({ force }) => force.map((one) => one / target))) * 1.02;
  const bolts = rounds[0]?.force.length ?? 1;
  const room = width - LEFT - 1;
  const pitch = room / bolts;
  const shapes = rounds.flatMap(({ force, worst }, at): Shape[] => {
    const floor = GAP + at * (STRIP + GAP) + STRIP;
    const y = (share: number) => floor - (share / most) * STRIP;
    const right = LEFT + room;
    const bars = force.map((one, i): Shape => {
      const [x0, x1] = [LEFT + (i + 0.18) * pitch, LEFT + (i + 0.82) * pitch];
      const top = y(Math.max(0.004, one / target));
      const points = [
        { x: x0, y: floor },
        { x: x1, y: floor },
        { x: x1, y: top },
        { x: x0, y: top },
      ];
      return { kind: 'polyline', closed: true, points, paint: { fill: 'quiet' } };
    });
    return [
      ...bars,
      line({ x: LEFT, y: floor }, { x: right, y: floor }),
      line({ x: LEFT, y: y(1) }, { x: right, y: y(1) }, false, 0.35),
      line({ x: LEFT, y: y(1 - wanted) }, { x: right, y: y(1 - wanted) }, true),
      line({ x: LEFT, y: y(1 + wanted) }, { x: right, y: y(1 + wanted) }, true),
      words({ x: LEFT - 1, y: y(1) + 0.9 }, '100 %', 'end'),
      words(
        { x: LEFT, y: floor - STRIP - 0.8 },
        label('interaction.strip', { round: at + 1, worst: { dimension: 'percent', value: worst } }),
      ),
    ];
  });
  const bottom = GAP + rounds.length * (STRIP + GAP);
  const every = [1, 2, 5, 10, 20, 50].find((n) => n * pitch >= textWidth(String(bolts), SIZE) + 1) ?? 50;
  const numbers = Array.from({ length: bolts }, (_, i) => i + 1)
    .filter((bolt) => bolt === 1 || bolt % every === 0)
    .map((bolt) => words({ x: LEFT + (bolt - 0.5) * pitch, y: bottom - GAP + 3 }, String(bolt), 'middle'));
  return {
    width,
    height: bottom,
    title: label('interaction.strips-title', { tag, rounds: rounds.length }),
    shapes: [...shapes, ...numbers],
  };
}

/** Force of every bolt round the ring: distance from the centre is the force, the bold circle the target, the dashed ones the wanted evenness. */
export function forceRing(
  rounds: readonly RoundPlan[],
  { tag, target, wanted }: ForceTarget,
  clockwise: boolean,
  size: number,
  { label } = ENGLISH_WORDS,
): Scene {
  const last = rounds.at(-1);
  const first = rounds.slice(0, -1).find(({ settings }) => settings[0]?.torque === last?.settings[0]?.torque) ?? rounds.at(-2);
  const most = Math.max(1.15, ...[first, last].flatMap((round) => round?.force.map((one) => one / target) ?? []));
  const centre = { x: size / 2, y: size / 2 };
  const reach = size / 2 - 5;
  const radius = (share: number) => (reach * share) / most;
  const outline = (force: readonly number[]): At[] =>
    force.map((one, i) => around(centre, radius(one / target), ((clockwise ? 1 : -1) * 2 * Math.PI * i) / force.length));
  const circle = (share: number, dashed: boolean): Shape => ({
    kind: 'circle',
    centre,
    radius: radius(share),
    paint: { stroke: dashed ? 'quiet' : 'ink', width: dashed ? 0.25 : 0.35, dashed },
  });
  const dots = last ? outline(last.force) : [];
  return {
    width: size,
    height: size,
    title: label('interaction.ring-title', { tag }),
    shapes: [
      circle(1, false),
      circle(1 - wanted, true),
      circle(1 + wanted, true),
      ...(first ? [{ kind: 'polyline', closed: true, points: outline(first.force), paint: { stroke: 'quiet', width: 0.4 } } as const] : []),
      ...(last ? [{ kind: 'polyline', closed: true, points: dots, paint: { stroke: 'mark', width: 0.6 } } as const] : []),
      ...dots.map((at): Shape => ({ kind: 'circle', centre: at, radius: 0.7, paint: { fill: 'mark' } })),
      centred({ x: centre.x, y: 2.2 }, label('drawing.bolt-one'), SIZE, 'ink', true),
    ],
  };
}
