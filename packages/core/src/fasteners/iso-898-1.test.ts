import { describe, expect, test } from 'vitest';
import { PROPERTY_CLASSES } from './iso-898-1.ts';
import { propertyClassLoad } from './iso-898-1-load.ts';
import { METRIC_THREADS } from './metric-threads.ts';

describe.each(PROPERTY_CLASSES.map((grade) => [grade.id, grade] as const))('property class %s', (id, grade) => {
  test('has proof stress below yield below tensile strength', () => {
    for (const { proof, yield: yieldStress, tensile } of grade.ranges) {
      expect(proof!).toBeLessThan(yieldStress!);
      expect(yieldStress!).toBeLessThan(tensile);
    }
  });
  test('is nowhere weaker than its digits say', () => {
    for (const { yield: yieldStress, tensile } of grade.ranges) {
      expect(tensile).toBeGreaterThanOrEqual(grade.nominal!.tensile);
      expect(yieldStress!).toBeGreaterThanOrEqual(grade.nominal!.yield);
    }
  });
  test('has loads within 1 % of area times stress, growing with the thread', () => {
    const sizes = METRIC_THREADS.filter(({ series, diameter }) => series === 'coarse' && diameter >= 3 && diameter <= 39);
    for (const kind of ['proof', 'tensile'] as const) {
      let last = 0;
      for (const thread of sizes) {
        const found = propertyClassLoad(grade, thread, kind);
        if (!found.ok || thread.printedStressArea === undefined) continue;
        const range = grade.ranges.find(({ above, upTo }) => thread.diameter > above && thread.diameter <= upTo)!;
        expect(Math.abs(found.value.value / (range[kind]! * thread.printedStressArea) - 1), `${id} ${thread.designation}`).toBeLessThan(
          0.01,
        );
        expect(found.value.value).toBeGreaterThan(last);
        last = found.value.value;
      }
    }
  });
});
