import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { RING, SPLICE, testPlan } from '../test-plan.ts';
import { jointDrawing } from './joint-drawing.ts';
import { type At, flatten, type Scene } from './scene.ts';
import { escapeXml, toSvg } from './svg.ts';

const upTo = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

/** A ring with the same steel and no more; planned once for each count. */
const ringOf = (boltCount: number) =>
  testPlan([
    {
      ...RING,
      layout: { kind: 'ring', boltCount, circle: 4200 as never },
      subgroups: [{ ...RING.subgroups[0]!, positions: upTo(boltCount) }],
    },
  ]).joints[0]!;

const gridOf = (rows: number, columns: number) =>
  testPlan([
    {
      ...SPLICE,
      layout: {
        kind: 'group',
        bolts: upTo(rows * columns).map((bolt) => ({
          x: (((bolt - 1) % columns) * 80) as never,
          y: (Math.floor((bolt - 1) / columns) * 90) as never,
        })),
      },
      subgroups: [{ ...SPLICE.subgroups[0]!, positions: upTo(rows * columns) }],
    },
  ]).joints[0]!;

/** Middles of the hexagons in the part of the paper left of the key. */
function hexagonsOf(scene: Scene, keyFrom: number): At[] {
  return flatten(scene.shapes).flatMap((shape) => {
    if (shape.kind !== 'polyline' || !shape.closed || shape.points.length !== 6) return [];
    const sum = shape.points.reduce((a, b) => ({ x: a.x + b.x, y: a.y + b.y }));
    const middle = { x: sum.x / 6, y: sum.y / 6 };
    return middle.x < keyFrom ? [middle] : [];
  });
}
const apart = (points: readonly At[]) => new Set(points.map(({ x, y }) => `${x.toFixed(2)}/${y.toFixed(2)}`)).size;

/** Every element closed in its order, every attribute quoted, no bare sign: what a strict XML reader asks of these few elements. */
function wellFormed(xml: string): boolean {
  const open: string[] = [];
  const rest = xml.replace(/<(\/?)([a-z]+)((?: [a-zA-Z:-]+="[^"<&]*(?:&#\d+;[^"<&]*)*")*)(\/?)>/g, (_, end, name, __, alone) => {
    if (end) return open.pop() === name ? '' : '<';
    if (!alone) open.push(name);
    return '';
  });
  return open.length === 0 && !/[<>]|&(?!#\d+;)/.test(rest);
}

describe('the drawing of a joint', () => {
  test('draws every bolt of a ring of 1 to 120 once, in a place of its own', () => {
    for (const boltCount of upTo(120)) {
      const middles = hexagonsOf(jointDrawing(ringOf(boltCount), 132, 70, 'right'), 88);
      expect({ boltCount, drawn: middles.length, apart: apart(middles) }).toEqual({ boltCount, drawn: boltCount, apart: boltCount });
    }
  });
  test('draws every bolt of a group once, in a place of its own', () => {
    for (const [rows, columns] of [
      [1, 1],
      [1, 6],
      [6, 1],
      [2, 4],
      [4, 10],
      [10, 12],
    ] as const) {
      const middles = hexagonsOf(jointDrawing(gridOf(rows, columns), 132, 70, 'right'), 88);
      expect([middles.length, apart(middles)]).toEqual([rows * columns, rows * columns]);
    }
  });
  test('keeps everything on its paper and finite, and is well-formed', () => {
    for (const joint of [...[1, 2, 3, 4, 7, 12, 20, 36, 48, 72, 119, 120].map(ringOf), gridOf(1, 1), gridOf(2, 4), gridOf(10, 12)]) {
      const scene = jointDrawing(joint, 100, 90, 'under');
      for (const shape of flatten(scene.shapes)) {
        const points = shape.kind === 'polyline' ? shape.points : shape.kind === 'text' ? [shape.at] : [];
        for (const { x, y } of points) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(scene.width);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(scene.height);
        }
      }
      const svg = toSvg(scene);
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(wellFormed(svg)).toBe(true);
    }
  });
  test('numbers a ring the way its datum says', () => {
    const clockwise = hexagonsOf(jointDrawing(ringOf(12), 132, 70, 'right'), 88);
    const joint = ringOf(12);
    const other = hexagonsOf(jointDrawing({ ...joint, datum: { ...joint.datum!, direction: 'counter-clockwise' } }, 132, 70, 'right'), 88);
    expect(clockwise[1]!.x).toBeGreaterThan(clockwise[0]!.x);
    expect(other[1]!.x).toBeLessThan(other[0]!.x);
  });
  test('writes the turn of each bolt at that bolt: never the list in place of it', () => {
    const joint = ringOf(12);
    const scene = jointDrawing(joint, 132, 90, 'right');
    const middles = hexagonsOf(scene, 88);
    const boxes = flatten(scene.shapes).flatMap((shape) =>
      shape.kind === 'text' && shape.fill === 'paper' && shape.at.x < 88 ? [shape] : [],
    );
    expect(boxes).toHaveLength(12);
    for (const { text, at } of boxes) {
      const near = middles.map(({ x, y }) => Math.hypot(x - at.x, y - at.y));
      const bolt = near.indexOf(Math.min(...near)) + 1;
      expect(joint.sequence.list[Number(text) - 1]).toEqual([bolt]);
      expect(joint.sequence.painted[bolt - 1]).toBe(Number(text));
    }
  });
  test('keeps any text a text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const datum = { boltOne: text, direction: 'clockwise', viewedFrom: text } as const;
        const svg = toSvg(jointDrawing({ ...PLANNED, tag: text, datum }, 100, 80, 'under'));
        expect(wellFormed(svg)).toBe(true);
        expect(escapeXml(text)).not.toMatch(/[<>"']|&(?!#\d+;)/);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});

const PLANNED = gridOf(2, 2);
