import type { RoundPlan } from '@clampwright/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { forceRing, forceStrips } from './force-plot.ts';
import { preloadBell, shareBars } from './scatter-plot.ts';
import { flatten, type Scene } from './scene.ts';
import { toSvg } from './svg.ts';

const RUNS = { seed: 20261127, numRuns: 200 };

/** Every place of a scene, whatever the shape. */
const places = (scene: Scene): number[] =>
  flatten(scene.shapes).flatMap((shape) => {
    const found: number[] = [];
    JSON.stringify(shape, (_, value: unknown) => {
      if (typeof value === 'number') found.push(value);
      return value;
    });
    return found;
  });

/** All there, finite, on the sheet, and no figure that is none in the SVG. */
function sound(scene: Scene): void {
  const numbers = places(scene);
  expect(numbers.length).toBeGreaterThan(0);
  for (const one of numbers) expect(Number.isFinite(one)).toBe(true);
  expect(scene.height).toBeGreaterThan(0);
  expect(toSvg(scene)).not.toMatch(/NaN|Infinity|undefined/);
}

const roundOf = (force: readonly number[]): RoundPlan => ({
  way: 'round',
  settings: [{ text: 'gear 1, step 2', labels: ['1', '2'], torque: 1000 as never, bolts: force.map((_, i) => i + 1) }],
  worst: 0.5,
  spread: 0.7,
  force,
  peak: Math.max(...force) as never,
  pulls: force.length,
  changes: 0,
  minutes: 3,
  energy: 10,
});
const forces = fc
  .integer({ min: 2, max: 120 })
  .chain((bolts) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 500_000 }), { minLength: bolts, maxLength: bolts }), { minLength: 1, maxLength: 6 }),
  );
const target = { tag: 'R1', target: 200_000, wanted: 0.1 };

describe('forces of a joint', () => {
  test('strips and ring are drawn for any forces, slack bolts and more than twice the target among them', () => {
    fc.assert(
      fc.property(forces, fc.boolean(), (rounds, clockwise) => {
        sound(forceStrips(rounds.map(roundOf), target, 130));
        sound(forceRing(rounds.map(roundOf), target, clockwise, 80));
      }),
      RUNS,
    );
  });
  test('a bar reaches as high as its share of the target', () => {
    const scene = forceStrips([roundOf([0, 100_000, 200_000])], target, 130);
    const tops = flatten(scene.shapes)
      .filter((shape) => shape.kind === 'polyline')
      .map((shape) => Math.max(...shape.points.map(({ y }) => y)) - Math.min(...shape.points.map(({ y }) => y)));
    expect(tops[1]! / tops[2]!).toBeCloseTo(0.5, 9);
  });
  test('bolt 2 stands clockwise of bolt 1, or the other way round', () => {
    const xs = [true, false].map((clockwise) => {
      const dots = flatten(forceRing([roundOf([1e5, 1e5, 1e5, 1e5])], target, clockwise, 80).shapes).filter(
        (shape) => shape.kind === 'circle' && shape.radius === 0.7,
      );
      return (dots[1] as { readonly centre: { readonly x: number } }).centre.x;
    });
    expect(xs[0]! - 40).toBeCloseTo(40 - xs[1]!, 9);
    expect(xs[0]!).toBeGreaterThan(40);
  });
});

describe('scatter', () => {
  test('the bell is drawn with any window, also one that lies far off', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.3, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        (variation, low, high) => {
          sound(
            preloadBell(
              { mean: 2e5, deviation: 2e5 * variation, low: 2e5 * low, high: 2e5 * high, say: (force) => `${Math.round(force)}` },
              120,
            ),
          );
        },
      ),
      RUNS,
    );
  });
  test('bars are as long as their shares', () => {
    const scene = shareBars(
      [
        { source: 'bolt to bolt', share: 0.8 },
        { source: 'certificate', share: 0.2 },
      ],
      120,
    );
    sound(scene);
    const lengths = flatten(scene.shapes)
      .filter((shape) => shape.kind === 'polyline')
      .map((shape) => Math.max(...shape.points.map(({ x }) => x)) - Math.min(...shape.points.map(({ x }) => x)));
    expect(lengths[0]! / lengths[1]!).toBeCloseTo(4, 9);
  });
});
