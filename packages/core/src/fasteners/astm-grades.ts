import { MPa, mm } from '../quantity.ts';
import type { Source } from '../source.ts';
import type { Grade } from './grade.ts';
import { type InchRange, inchStrength } from './inch-strength.ts';

const astm = (standard: string, edition: string, provenance: Source['provenance'], clause = 'tensile requirements'): Source => ({
  standard: `ASTM ${standard}`,
  edition,
  clause,
  provenance,
});
const A193 = astm('A193/A193M', '2016', 'published', 'Table 2, inch products');
const A320 = astm('A320/A320M', '2015', 'memory');
const A325 = astm('A325', '2014', 'published');
const A307 = astm('A307', '2014', 'published');
const A354 = astm('A354', '2011', 'published');
const A449 = astm('A449', '2014', 'published');
const A490 = astm('A490', '2014', 'published');
const F3125 = astm('F3125/F3125M', '2015', 'published');

const grade = (id: string, aliases: readonly string[], source: Source, ...ranges: readonly InchRange[]): Grade => ({
  id,
  aliases,
  family: 'ASTM',
  ranges: ranges.map(inchStrength),
  source,
});

/** Metric structural bolts of ASTM F3125M: M12 to M36, MPa. */
const metricGrade = (
  id: string,
  aliases: readonly string[],
  proof: number,
  yieldStrength: number,
  tensile: number,
  tensileMax?: number,
): Grade => ({
  id,
  aliases,
  family: 'ASTM',
  ranges: [
    {
      above: mm(11.9),
      upTo: mm(36),
      proof: MPa(proof),
      yield: MPa(yieldStrength),
      tensile: MPa(tensile),
      ...(tensileMax === undefined ? {} : { tensileMax: MPa(tensileMax) }),
    },
  ],
  source: { ...F3125, provenance: 'memory' },
});

/** "All sizes" ends here, in: beyond it the product asks. */
const ALL = 8;

/**
 * Bolting grades of ASTM, inch products: proof stress, yield and tensile strength, with the diameters where they change. Each break
 * belongs to the smaller sizes. `null`: the standard gives none; A307 has no proof load and no yield, A193 and A320 no proof load.
 *
 * A325 depends on the edition: F3125 (2015 and later) keeps 120 ksi at every size, A325 up to 2014 drops to 105 ksi above 1 in.
 * A193 B8M Class 2 to 3/4 in: 95 ksi yield; some editions print 96.
 *
 * Source: the standards named with each grade; A320, and yields not asked for by a purchaser's table, from memory.
 *
 * @example
 * const b7 = ASTM_GRADES.find(({ id }) => id === 'A193 B7');
 * expect(inKsi(strengthAt(b7, inch(2.5)).value.yield)).toBeCloseTo(105, 9);
 * expect(inKsi(strengthAt(b7, inch(2.75)).value.yield)).toBeCloseTo(95, 9);
 */
// biome-ignore format: a table is read by its columns
export const ASTM_GRADES: readonly Grade[] = [
  //                                                    above  up to proof yield tensile max
  grade('A307 Grade A', ['A307 A', 'A307'], A307,       [0,    4,    null, null, 60]),
  grade('A307 Grade B', ['A307 B'], A307,               [0,    4,    null, null, 60, 100]),
  // structural
  grade('F3125 A325', ['A325', 'F3125 Grade A325', 'A325 Type 1'], F3125, [0.499, 1.5, 85, 92, 120]),
  grade('F3125 F1852', ['F1852', 'F3125 Grade F1852'], F3125, [0.499, 1.25, 85, 92, 120]),
  grade('F3125 A490', ['F3125 Grade A490'], F3125,      [0.499, 1.5, 120,  130,  150, 173]),
  grade('F3125 F2280', ['F2280', 'F3125 Grade F2280'], F3125, [0.499, 1.25, 120, 130, 150, 173]),
  metricGrade('F3125 A325M', ['A325M', 'F3125 Grade A325M'], 600, 660, 830),
  metricGrade('F3125 A490M', ['A490M', 'F3125 Grade A490M'], 830, 940, 1040, 1210),
  grade('A325-14', ['A325-14 or older', 'A325 before 2015'], A325, [0.499, 1, 85, 92, 120], [1, 1.5, 74, 81, 105]),
  grade('A490', ['A490-14', 'A490-14 or older', 'A490 before 2015'], A490, [0.499, 1.5, 120, 130, 150, 173]),
  // machinery and anchors
  grade('A449', ['A449 Type 1'], A449,                  [0,    1,    85,   92,   120], [1, 1.5, 74, 81, 105], [1.5, 3, 55, 58, 90]),
  grade('A354 BC', ['A354 Grade BC'], A354,             [0,    2.5,  105,  109,  125], [2.5, 4, 95, 99, 115]),
  grade('A354 BD', ['A354 Grade BD'], A354,             [0,    2.5,  120,  130,  150], [2.5, 4, 105, 115, 140]),
  // flange studs, ferritic
  grade('A193 B5', ['B5'], A193,                        [0,    4,    null, 80,   100]),
  grade('A193 B6', ['B6'], A193,                        [0,    4,    null, 85,   110]),
  grade('A193 B7', ['B7', 'A193 Grade B7'], A193,       [0,    2.5,  null, 105,  125], [2.5, 4, null, 95, 115], [4, 7, null, 75, 100]),
  grade('A193 B7M', ['B7M', 'A193 Grade B7M'], A193,    [0,    4,    null, 80,   100], [4, 7, null, 75, 100]),
  grade('A193 B16', ['B16', 'A193 Grade B16'], A193,    [0,    2.5,  null, 105,  125], [2.5, 4, null, 95, 110], [4, 8, null, 85, 100]),
  // flange studs, austenitic: solution treated (Class 1), strain hardened (Class 2)
  grade('A193 B8 Class 1', ['A193 B8 Cl 1', 'A193 B8', 'B8'], A193, [0, ALL, null, 30, 75]),
  grade('A193 B8M Class 1', ['A193 B8M Cl 1', 'A193 B8M', 'B8M'], A193, [0, ALL, null, 30, 75]),
  grade('A193 B8 Class 2', ['A193 B8 Cl 2', 'B8 Class 2'], A193,
    [0, 0.75, null, 100, 125], [0.75, 1, null, 80, 115], [1, 1.25, null, 65, 105], [1.25, 1.5, null, 50, 100]),
  grade('A193 B8M Class 2', ['A193 B8M Cl 2', 'B8M Class 2'], A193,
    [0, 0.75, null, 95, 110], [0.75, 1, null, 80, 100], [1, 1.25, null, 65, 95], [1.25, 1.5, null, 50, 90]),
  // flange studs, low temperature
  grade('A320 L7', ['L7', 'A320 Grade L7'], A320,       [0,    2.5,  null, 105,  125]),
  grade('A320 L7M', ['L7M', 'A320 Grade L7M'], A320,    [0,    2.5,  null, 80,   100]),
  grade('A320 L43', ['L43', 'A320 Grade L43'], A320,    [0,    4,    null, 105,  125]),
];
