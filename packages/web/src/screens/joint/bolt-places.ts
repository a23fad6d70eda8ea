import type { JointPlan } from '@clampwright/core';

export interface BoltPlace {
  readonly bolt: number;
  readonly x: number;
  readonly y: number;
  /** of its hexagon, from the middle to a corner */
  readonly size: number;
}

/**
 * Where the bolts stand in a square from −100 to 100, y downwards: bolt 1 of a ring at the top and numbers the way the datum says; a
 * group by its own measures, as on the card. `turn`: quarter turns clockwise, to where the operator stands.
 */
export function boltPlaces({ layout, boltCount, datum }: JointPlan, turn: number): BoltPlace[] {
  const raw = layout.kind === 'group' ? group(layout.bolts) : ring(boltCount, datum?.direction === 'counter-clockwise' ? -1 : 1);
  const nearest = Math.min(...raw.slice(1).map((one, i) => Math.hypot(one.x - raw[i]!.x, one.y - raw[i]!.y)), 60);
  const size = Math.max(3, Math.min(14, nearest * 0.42));
  const [cos, sin] = [[1, 0, -1, 0][turn]!, [0, 1, 0, -1][turn]!];
  return raw.map(({ x, y }, i) => ({ bolt: i + 1, x: x * cos - y * sin, y: x * sin + y * cos, size }));
}

const ring = (count: number, way: 1 | -1) =>
  Array.from({ length: count }, (_, i) => {
    const angle = (way * 2 * Math.PI * i) / count;
    return { x: 100 * Math.sin(angle), y: -100 * Math.cos(angle) };
  });

function group(bolts: readonly { readonly x: number; readonly y: number }[]) {
  const [xs, ys] = [bolts.map(({ x }) => x), bolts.map(({ y }) => y)];
  const middle = (all: number[]) => (Math.min(...all) + Math.max(...all)) / 2;
  const reach = Math.max(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys), 1) / 2;
  const scale = 94 / reach;
  return bolts.map(({ x, y }) => ({ x: (x - middle(xs)) * scale, y: (y - middle(ys)) * scale }));
}
