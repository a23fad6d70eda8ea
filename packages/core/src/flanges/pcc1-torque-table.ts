import { inchSize } from '../fasteners/inch-size.ts';
import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { inch, inInch, ksi, lbfFt, type Megapascal, type Millimetre, type NewtonMillimetre, Nmm } from '../quantity.ts';
import type { Cited, Source } from '../source.ts';

const source: Source = { standard: 'ASME PCC-1', edition: '2013', clause: 'Table 1', provenance: 'published' };
/** Sizes not seen while the table was entered. */
const recalled: Source = { ...source, provenance: 'memory' };

/** Stress on the root area that the table stands for. */
export const PCC1_TABLE_STRESS = ksi(50);

/** Bolt size (UNC to 1 in, 8UN above), torque of non-coated and of coated bolts, lbf·ft. */
// biome-ignore format: a table is read by its columns
const ROWS: readonly (readonly [size: string, nonCoated: number, coated: number, source: Source])[] = [
  ['1/2',   60,    45,    source],
  ['5/8',   120,   90,    recalled],
  ['3/4',   210,   160,   source],
  ['7/8',   350,   250,   source],
  ['1',     500,   400,   recalled],
  ['1 1/8', 750,   550,   source],
  ['1 1/4', 1050,  800,   source],
  ['1 3/8', 1400,  1050,  recalled],
  ['1 1/2', 1800,  1400,  source],
  ['1 5/8', 2350,  1800,  source],
  ['1 3/4', 2950,  2300,  recalled],
  ['1 7/8', 3650,  2800,  source],
  ['2',     4500,  3400,  source],
  ['2 1/4', 6500,  4900,  recalled],
  ['2 1/2', 9000,  6800,  source],
  ['2 3/4', 12000, 9100,  source],
  ['3',     15700, 11900, recalled],
  ['3 1/4', 20100, 15300, source],
  ['3 1/2', 25300, 19100, source],
  ['3 3/4', 31200, 23600, recalled],
  ['4',     38000, 28800, source],
];

export const PCC1_TORQUES = ROWS.map(([size, nonCoated, coated, source]) => ({
  diameter: inch(inchSize(size)!),
  nonCoated: lbfFt(nonCoated),
  coated: lbfFt(coated),
  source,
}));

/**
 * Torque of the reference table for low-alloy flange studs, scaled linearly from 50 ksi on the root area.
 *
 * An adjusted table, not K·D·F with one K: the nut factor it implies falls from about 0.23 at 1/2 in to 0.197 at 4 in (non-coated), from 0.17 to 0.15
 * (coated). Never regenerate it from K = 0.20.
 *
 * Valid for: 1/2 to 4 in, low-alloy steel, washers under the nuts, lubricated as the code asks. Source: ASME PCC-1:2013 Table 1, section 12.
 *
 * @example
 * expect(inLbfFt(pcc1Torque(inch(7 / 8), 'non-coated').value.value)).toBeCloseTo(350, 6);
 * expect(inLbfFt(pcc1Torque(inch(1), 'non-coated', ksi(60)).value.value)).toBeCloseTo(600, 6);
 */
export function pcc1Torque(
  diameter: Millimetre,
  surface: 'coated' | 'non-coated',
  rootStress: Megapascal = PCC1_TABLE_STRESS,
): Outcome<Cited<NewtonMillimetre>> {
  const row = PCC1_TORQUES.find((one) => Math.abs(one.diameter - diameter) < 1e-6);
  if (!row) return refused(notice('size-not-in-table', { size: `${inInch(diameter)} in`, table: 'ASME PCC-1:2013 Table 1' }));
  return done({ value: scaledTorque(surface === 'coated' ? row.coated : row.nonCoated, rootStress), source: row.source });
}

/** A table torque at another stress on the root area: T = T₅₀·S/50 ksi. Source: ASME PCC-1:2013 section 12. */
export const scaledTorque = (tableTorque: NewtonMillimetre, rootStress: Megapascal): NewtonMillimetre =>
  Nmm((tableTorque * rootStress) / PCC1_TABLE_STRESS);
