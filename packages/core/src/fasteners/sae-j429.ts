import type { Source } from '../source.ts';
import type { Grade } from './grade.ts';
import { type InchRange, inchStrength } from './inch-strength.ts';

const j429: Source = { standard: 'SAE J429', edition: '2014', clause: 'Table 1', provenance: 'published' };
const recalled: Source = { ...j429, provenance: 'memory' };

const grade = (number: string, source: Source, ...ranges: readonly InchRange[]): Grade => ({
  id: `J429 Grade ${number}`,
  aliases: [`Grade ${number}`, `SAE Grade ${number}`, `SAE J429 Grade ${number}`],
  family: 'SAE J429',
  ranges: ranges.map(inchStrength),
  source,
});

/**
 * Bolts, screws and studs of SAE J429: proof stress, yield and tensile strength, with the diameters where they change. Each break
 * belongs to the smaller sizes: Grade 2 changes above 3/4 in, Grade 5 above 1 in.
 *
 * Source: SAE J429:2014 Table 1 (grades 4, 5.1, 5.2, 7, 8.1 and 8.2 from memory).
 *
 * @example
 * const grade5 = SAE_GRADES.find(({ id }) => id === 'J429 Grade 5');
 * expect(inKsi(strengthAt(grade5, inch(1)).value.proof)).toBeCloseTo(85, 9);
 * expect(inKsi(strengthAt(grade5, inch(1.125)).value.proof)).toBeCloseTo(74, 9);
 */
// biome-ignore format: a table is read by its columns
export const SAE_GRADES: readonly Grade[] = [
  //                above  up to proof  yield  tensile
  grade('1', j429,     [0,    1.5,  33,  36,  60]),
  grade('2', j429,     [0,    0.75, 55,  57,  74], [0.75, 1.5, 33, 36, 60]),
  grade('4', recalled, [0,    1.5,  65,  100, 115]),
  grade('5', j429,     [0,    1,    85,  92,  120], [1, 1.5, 74, 81, 105]),
  grade('5.1', recalled, [0,  0.625, 85, 92,  120]),
  grade('5.2', recalled, [0,  1,    85,  92,  120]),
  grade('7', recalled, [0,    1.5,  105, 115, 133]),
  grade('8', j429,     [0,    1.5,  120, 130, 150]),
  grade('8.1', recalled, [0,  1.5,  120, 130, 150]),
  grade('8.2', recalled, [0,  1,    120, 130, 150]),
];
