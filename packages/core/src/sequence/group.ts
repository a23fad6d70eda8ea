import type { Millimetre } from '../quantity.ts';

export interface Point {
  readonly x: Millimetre;
  readonly y: Millimetre;
}

/**
 * Order of a bolt group: from the stiffest part outwards, alternating sides.
 *
 * - `bolts`: positions in the plane of the joint, mm; bolt i + 1 is entry i
 * - `stiffest`: where the joint is stiffest (a cover-plate splice: the middle of the group; an end plate: beside the
 *   beam's flanges); the middle of the group where it is not given
 *
 * Bolts at the same distance are taken so that each lies as far as possible from the one before.
 * Source: EN 1090-2:2018 8.3 and 8.5.1 (most rigid part to least rigid part); RCSC 8.1 (same); the alternation: common practice, no source.
 *
 * @example
 * const row = [-90, -30, 30, 90].map((x) => ({ x: mm(x), y: mm(0) }));
 * expect(groupOrder(row)).toEqual([2, 3, 1, 4]);
 */
export function groupOrder(bolts: readonly Point[], stiffest: Point = middle(bolts)): number[] {
  const ranked = bolts
    .map((at, index) => ({ at, bolt: index + 1, reach: distance(at, stiffest) }))
    .sort((a, b) => a.reach - b.reach || a.bolt - b.bolt);
  const order: number[] = [];
  let last: Point | undefined;
  for (let from = 0; from < ranked.length; ) {
    let to = from;
    while (to < ranked.length && ranked[to]!.reach - ranked[from]!.reach < SAME_REACH) to += 1;
    const band = ranked.slice(from, to);
    while (band.length > 0) {
      const next = last === undefined ? 0 : farthest(band, last);
      const [taken] = band.splice(next, 1);
      order.push(taken!.bolt);
      last = taken!.at;
    }
    from = to;
  }
  return order;
}

/** mm; bolts nearer alike than this count as equally far from the stiffest part */
const SAME_REACH = 1;

const distance = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

function farthest(band: readonly { at: Point }[], last: Point): number {
  let best = 0;
  for (let i = 1; i < band.length; i += 1) {
    if (distance(band[i]!.at, last) > distance(band[best]!.at, last) + SAME_REACH) best = i;
  }
  return best;
}

function middle(bolts: readonly Point[]): Point {
  const n = bolts.length || 1;
  return {
    x: (bolts.reduce((sum, { x }) => sum + x, 0) / n) as Millimetre,
    y: (bolts.reduce((sum, { y }) => sum + y, 0) / n) as Millimetre,
  };
}
