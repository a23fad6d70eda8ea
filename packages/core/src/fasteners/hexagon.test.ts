import { describe, expect, test } from 'vitest';
import { mm } from '../quantity.ts';
import { type HexagonProduct, hexagonFor } from './hexagon.ts';
import { isoHexagon } from './iso-hexagon.ts';
import { METRIC_THREADS } from './metric-threads.ts';

const coarse = METRIC_THREADS.filter(({ series }) => series === 'coarse');
const all = (product: HexagonProduct) =>
  coarse.flatMap((thread) => {
    const found = hexagonFor(thread, product);
    return found.ok ? [{ ...found.value, diameter: thread.diameter }] : [];
  });

describe.each(['ISO', 'HR', 'HV'] as const)('the family %s', (product) => {
  const sizes = all(product);
  test.each(['acrossFlats', 'headHeight', 'nutHeight', 'bearingFace', 'washerOuter', 'hole'] as const)(
    '%s grows with the thread',
    (field) => {
      const values = sizes.flatMap((hexagon) => hexagon[field] ?? []);
      expect(values.length).toBeGreaterThan(7);
      for (const [at, value] of values.entries()) if (at > 0) expect(value).toBeGreaterThan(values[at - 1]!);
    },
  );
  test('bearing face lies between thread and flats, and the hole inside the face', () => {
    for (const { diameter, bearingFace, acrossFlats, hole } of sizes.filter(({ bearingFace }) => bearingFace !== undefined)) {
      expect(bearingFace!).toBeGreaterThan(diameter);
      expect(bearingFace!).toBeLessThan(acrossFlats);
      expect(hole!).toBeLessThan(bearingFace!);
    }
  });
  test('the washer covers the bearing face', () => {
    for (const { bearingFace, washerOuter } of sizes) if (bearingFace && washerOuter) expect(washerOuter).toBeGreaterThan(bearingFace);
  });
});

test('HV nuts are lower than HR nuts, and both are wider than ISO from M12 to M36', () => {
  for (const { diameter, nutHeight, acrossFlats } of all('HV').filter(({ nutHeight }) => nutHeight !== undefined)) {
    const hr = all('HR').find((one) => one.diameter === diameter)!;
    expect(nutHeight!).toBeLessThan(hr.nutHeight!);
    expect(hr.acrossFlats).toBe(acrossFlats);
    expect(acrossFlats).toBeGreaterThan(isoHexagon(mm(diameter))!.acrossFlats);
  }
});
