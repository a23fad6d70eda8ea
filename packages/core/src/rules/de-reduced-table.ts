import { kN, type Millimetre, N, type Newton, type NewtonMillimetre, Nm, type Radian } from '../quantity.ts';
import type { Source } from '../source.ts';
import { rotationByThickness } from './en-1090.ts';

/** One size of the German table for HV 10.9 sets, hot-dip galvanised, lubricated with MoS₂ as delivered. `null`: no value recalled. */
export interface ReducedRow {
  readonly diameter: number;
  /** regular preload F_p,C* */
  readonly preload: Newton;
  /** tightening torque of the modified torque method */
  readonly torque: NewtonMillimetre | null;
  /** pre-tightening torque of the combined method, about 0.75·M_A */
  readonly combined: NewtonMillimetre | null;
  /** preload set on an impact driver, and pre-tightening torque of the old turn-of-nut method (DIN 18800-7) */
  readonly impact: Newton | null;
  readonly turnOfNut: NewtonMillimetre | null;
}

export const REDUCED_SOURCE: Source = {
  standard: 'DIN EN 1993-1-8/NA',
  edition: '2010',
  clause: 'Table NA.A.2; DIN 18800-7:2008 Table B.1; DASt-Richtlinie 021 above M36',
  provenance: 'memory',
};

const row = (
  diameter: number,
  preload: number,
  torque: number | null,
  combined: number | null,
  impact: number | null,
  turnOfNut: number | null,
): ReducedRow => ({
  diameter,
  preload: kN(preload),
  torque: torque === null ? null : Nm(torque),
  combined: combined === null ? null : Nm(combined),
  impact: impact === null ? null : kN(impact),
  turnOfNut: turnOfNut === null ? null : Nm(turnOfNut),
});

// biome-ignore format: a table is read by its columns
export const REDUCED_TABLE: readonly ReducedRow[] = [
  //   d   F_p,C*  M_A   M_pre impact turn-of-nut
  row(12,   50,   100,    75,   60,   10),
  row(16,  100,   250,   190,  110,   50),
  row(20,  160,   450,   340,  175,   50),
  row(22,  190,   650,   490,  210,  100),
  row(24,  220,   800,   600,  240,  100),
  row(27,  290,  1250,   940,  320,  200),
  row(30,  350,  1650,  1240,  390,  200),
  row(36,  510,  2800,  2100,  560,  200),
  row(39,  610,  3500,  null, null, null),
  row(42,  710,  4500,  null, null, null),
  row(45,  820,  null,  null, null, null),
  row(48,  930,  6500,  null, null, null),
  row(56, 1280, 10000,  null, null, null),
  row(64, 1680,  null,  null, null, null),
];

export const reducedRow = (diameter: Millimetre): ReducedRow | undefined => REDUCED_TABLE.find((one) => one.diameter === diameter);

/**
 * Regular preload before the table's rounding to 10 kN: F_p,C* = 0.7·f_yb·A_s.
 *
 * Source: DIN EN 1993-1-8/NA:2010.
 *
 * @example
 * expect(inKilonewton(reducedPreloadOf(MPa(900), mm2(245)))).toBeCloseTo(154.35, 2);
 */
export const reducedPreloadOf = (yieldStrength: number, area: number): Newton => N(0.7 * yieldStrength * area);

/** What may be counted on if the joint is not retightened: 0.9·F_p,C* (categories B and C; a single source, from memory). */
export const countedPreload = (preload: Newton, retightened: boolean): Newton => N(retightened ? preload : 0.9 * preload);

/**
 * Further rotation of the combined method that aims at F_p,C* only: 45°, 60°, 90° over the same bands of Σt/d.
 *
 * Source: DIN EN 1993-1-8/NA:2010; DIN 18800-7 (from memory).
 *
 * @example
 * expect(inDegrees(reducedRotation(mm(24), mm(30)))).toBeCloseTo(45, 9);
 */
export const reducedRotation = (diameter: Millimetre, clampThickness: Millimetre): Radian | undefined =>
  rotationByThickness(diameter, clampThickness, [45, 60, 90]);
