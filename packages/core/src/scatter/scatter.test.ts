import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chanceAllInside, chanceInside } from './all-inside.ts';
import { gaussLegendre } from './gauss-legendre.ts';

const { rows } = JSON.parse(readFileSync(join(import.meta.dirname, 'all-inside.scipy.json'), 'utf8')) as { rows: number[][] };

test('the chance that all bolts lie inside is that of SciPy to 1e-6', () => {
  let worst = 0;
  for (const [shared, individual, low, high, bolts, chance] of rows as [number, number, number, number, number, number][])
    worst = Math.max(worst, Math.abs(chanceAllInside({ mean: 100, shared, individual }, { low, high }, bolts) - chance));
  expect(rows.length).toBe(400);
  expect(worst).toBeLessThan(1e-6);
});

test('one bolt is the plain normal chance; more bolts are never likelier; a wider window never less', () => {
  const share = (max: number) => fc.double({ min: 0.002, max, noNaN: true });
  fc.assert(
    fc.property(share(0.1), share(0.15), share(0.2), fc.integer({ min: 2, max: 300 }), (shared, individual, half, bolts) => {
      const joint = { mean: 1, shared, individual };
      const window = { low: 1 - half, high: 1 + half };
      const chance = chanceAllInside(joint, window, bolts);
      expect(chanceAllInside(joint, window, 1)).toBeCloseTo(chanceInside(joint, window), 6);
      expect(chance).toBeLessThanOrEqual(chanceAllInside(joint, window, bolts - 1) + 1e-9);
      expect(chance).toBeLessThanOrEqual(chanceAllInside(joint, { low: 1 - half * 1.2, high: 1 + half * 1.2 }, bolts) + 1e-9);
      // bolts of one joint share their luck: never worse than independent ones
      expect(chance).toBeGreaterThanOrEqual(chanceInside(joint, window) ** bolts - 1e-7);
    }),
    { seed: 11, numRuns: 200 },
  );
});

test('without shared or own scatter the limits hold', () => {
  expect(chanceAllInside({ mean: 100, shared: 0, individual: 0.05 }, { low: 90, high: 110 }, 8)).toBeCloseTo(0.9544997 ** 8, 6);
  expect(chanceAllInside({ mean: 100, shared: 0.05, individual: 0 }, { low: 90, high: 110 }, 8)).toBeCloseTo(0.9544997, 6);
  expect(chanceAllInside({ mean: 100, shared: 0, individual: 0 }, { low: 90, high: 110 }, 8)).toBe(1);
});

test('the quadrature is exact for polynomials to degree 2n − 1', () => {
  for (const n of [4, 12]) {
    const integral = gaussLegendre(n).reduce((sum, [x, weight]) => sum + weight * x ** (2 * n - 2), 0);
    expect(integral).toBeCloseTo(2 / (2 * n - 1), 13);
  }
});
