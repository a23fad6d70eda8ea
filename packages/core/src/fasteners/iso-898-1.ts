import { type Megapascal, MPa, mm } from '../quantity.ts';
import type { Source } from '../source.ts';
import type { Grade, Strength } from './grade.ts';

const standard: Source = { standard: 'ISO 898-1', edition: '2013', clause: 'Tables 3, 5', provenance: 'published' };
/** ISO 898-1 ends at M39. Large structural and tower bolts take the strengths of the class beyond it by agreement. */
const beyond: Source = {
  standard: 'ISO 898-1',
  edition: '2013',
  clause: 'strengths carried beyond M39 by agreement, as DASt-Ri 021 does',
  provenance: 'common-practice',
};
const LARGEST = mm(39);
const LARGEST_BY_AGREEMENT = mm(72);

interface Minimum {
  readonly proof: Megapascal;
  readonly yield: Megapascal;
  readonly tensile: Megapascal;
}
const minimum = (proof: number, yieldStress: number, tensile: number): Minimum => ({
  proof: MPa(proof),
  yield: MPa(yieldStress),
  tensile: MPa(tensile),
});

const range = (above: number, upTo: number, strength: Minimum): Strength => ({ above: mm(above), upTo: mm(upTo), ...strength });
const onward = (strength: Minimum): Strength => ({ above: LARGEST, upTo: LARGEST_BY_AGREEMENT, ...strength, source: beyond });

function propertyClass(id: string, ranges: readonly Strength[], aliases: readonly string[] = []): Grade {
  const [tensile, ratio] = id
    .replace(/[^\d.]/g, '')
    .split('.')
    .map(Number) as [number, number];
  return {
    id,
    aliases,
    family: 'ISO 898-1',
    ranges,
    nominal: { tensile: MPa(tensile * 100), yield: MPa(tensile * ratio * 10) },
    source: standard,
  };
}
const uniform = (id: string, strength: Minimum, aliases?: readonly string[]): Grade =>
  propertyClass(id, [range(0, LARGEST, strength), onward(strength)], aliases);

const MEDIUM_8_8 = minimum(580, 640, 800);
const LARGE_8_8 = minimum(600, 660, 830);

/**
 * Property classes of bolts: stress under proof load, minimum yield (R_eL, R_pf or R_p0.2), minimum tensile strength, MPa;
 * `nominal` is f_ub and f_yb of EN 1993-1-8:2005 Table 3.1, from the digits of the class.
 *
 * Class 8.8 changes above 16 mm; structural 8.8 bolts take the upper values from M12 (`HR 8.8`). Class 9.8 ends at 16 mm.
 * Source: ISO 898-1:2013 Tables 3 and 5.
 *
 * @example
 * expect(PROPERTY_CLASSES.find(({ id }) => id === '10.9').ranges[0].proof).toBe(830);
 */
export const PROPERTY_CLASSES: readonly Grade[] = [
  uniform('4.6', minimum(225, 240, 400)),
  uniform('4.8', minimum(310, 340, 420)),
  uniform('5.6', minimum(280, 300, 500)),
  uniform('5.8', minimum(380, 420, 520)),
  uniform('6.8', minimum(440, 480, 600)),
  propertyClass('8.8', [range(0, 16, MEDIUM_8_8), range(16, LARGEST, LARGE_8_8), onward(LARGE_8_8)], ['SB 8.8']),
  propertyClass('HR 8.8', [range(10, LARGEST, LARGE_8_8)], ['8.8 HR', '8.8 structural', 'structural 8.8']),
  propertyClass('9.8', [range(0, 16, minimum(650, 720, 900))]),
  uniform('10.9', minimum(830, 940, 1040), ['HV', 'HV 10.9', '10.9 HV', 'HR 10.9', '10.9 HR', 'HRC 10.9', '10.9 HRC', 'SB 10.9']),
  uniform('12.9', minimum(970, 1100, 1220), ['12.9 underlined']),
];
