import { expect, test } from 'vitest';
import { axesFrom, cross, dot, placed, within } from './placement.ts';
import { planeOf } from './plane.ts';

test('a place in a place in a place: turned about two axes, worked out by hand', () => {
  // site: quarter turn about z; part: its z along the site's x, its x along the site's y
  const site = axesFrom([1000, 2000, 0], [0, 0, 1], [0, 1, 0]);
  const part = within(site, axesFrom([100, 0, 3000], [1, 0, 0], [0, 1, 0]));
  expect(part).toEqual({ origin: [1000, 2100, 3000], x: [-1, 0, 0], y: [0, 0, 1], z: [0, 1, 0] });
  expect(placed(part, [70, 60, 10])).toEqual([930, 2110, 3060]);
});

test('a third of a turn about (1, 1, 1) takes x to y, y to z and z to x', () => {
  const turn = axesFrom([0, 0, 0], [1, 0, 0], [0, 1, 0]);
  expect(placed(turn, [1, 2, 3])).toEqual([3, 1, 2]);
  expect(placed(within(within(turn, turn), turn), [1, 2, 3])).toEqual([1, 2, 3]);
});

test('a reference direction that is not square is made so, and one along the axis is replaced', () => {
  const skew = axesFrom([0, 0, 0], [0, 0, 1], [1, 0, 5]);
  expect(skew.x).toEqual([1, 0, 0]);
  const none = axesFrom([0, 0, 0], [1, 1, 1], [2, 2, 2]);
  expect(Math.abs(dot(none.x, none.z))).toBeLessThan(1e-12);
  expect(cross(none.x, none.y).map((one) => Math.round(one * 1e9))).toEqual(none.z.map((one) => Math.round(one * 1e9)));
});

test('where axes say nothing, the plane is that in which the points scatter', () => {
  // points of x + 2 y + 2 z = 9, axes that differ
  const points = [
    [9, 0, 0],
    [1, 4, 0],
    [1, 0, 4],
    [5, 1, 1],
  ] as const;
  const { normal, off } = planeOf(points, [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
    [1, 0, 0],
  ]);
  expect(Math.abs(dot(normal, [1 / 3, 2 / 3, 2 / 3]))).toBeCloseTo(1, 9);
  expect(off).toBeLessThan(1e-9);
});
