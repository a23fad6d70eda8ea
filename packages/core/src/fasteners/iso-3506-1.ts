import { MPa, mm } from '../quantity.ts';
import type { Source } from '../source.ts';
import type { Grade } from './grade.ts';

const standard: Source = {
  standard: 'ISO 3506-1',
  edition: '2020',
  clause: 'Tables 2, 3; size limits as in the 2009 edition',
  provenance: 'memory',
};

/**
 * Steel groups, class, minimum R_p0.2 in MPa, largest diameter in mm. The class is a tenth of the minimum tensile strength.
 * Above M24 the 2009 edition leaves classes 70 and 80 to agreement between user and maker; that limit is kept here.
 */
const CLASSES: readonly (readonly [steels: readonly string[], propertyClass: number, yieldStress: number, largest: number])[] = [
  [['A1', 'A2', 'A3', 'A4', 'A5'], 50, 210, 39],
  [['A1', 'A2', 'A3', 'A4', 'A5', 'A8'], 70, 450, 24],
  [['A1', 'A2', 'A3', 'A4', 'A5', 'A8'], 80, 600, 24],
  [['A4', 'A5', 'A8'], 100, 800, 24],
  [['D2', 'D4', 'D6', 'D8'], 70, 450, 39],
  [['D2', 'D4', 'D6', 'D8'], 80, 600, 39],
  [['D2', 'D4', 'D6', 'D8'], 100, 800, 39],
  [['C1'], 50, 250, 39],
  [['C1'], 70, 410, 39],
  [['C1'], 110, 820, 39],
  [['C3'], 80, 640, 39],
  [['C4'], 50, 250, 39],
  [['C4'], 70, 410, 39],
  [['F1'], 45, 250, 24],
  [['F1'], 60, 410, 24],
];

/**
 * Stainless bolts: austenitic A, duplex D, martensitic C, ferritic F. ISO 3506-1 gives no stress under proof load, so none is given.
 * Source: ISO 3506-1:2020, from memory.
 *
 * @example
 * expect(STAINLESS_CLASSES.find(({ id }) => id === 'A4-80').ranges[0].yield).toBe(600);
 */
export const STAINLESS_CLASSES: readonly Grade[] = CLASSES.flatMap(([steels, propertyClass, yieldStress, largest]) =>
  steels.map(
    (steel): Grade => ({
      id: `${steel}-${propertyClass}`,
      family: 'ISO 3506-1',
      ranges: [{ above: mm(0), upTo: mm(largest), proof: null, yield: MPa(yieldStress), tensile: MPa(propertyClass * 10) }],
      source: standard,
    }),
  ),
);
