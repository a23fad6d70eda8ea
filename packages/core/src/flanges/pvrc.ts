import { notice } from '../notice/index.ts';
import { done, type Outcome, refused } from '../outcome.ts';
import { inPsi, type Megapascal, MPa, psi } from '../quantity.ts';
import type { Source } from '../source.ts';

/** Room-temperature tightness constants of a gasket: loading line G_b·T_p^a, and G_s of unloading. */
export interface TightnessConstants {
  readonly gasket: string;
  readonly loading: Megapascal;
  readonly exponent: number;
  readonly unloading: Megapascal;
  readonly source: Source;
}

const published: Source = { standard: 'PVRC room-temperature tightness', clause: 'constants by gasket type', provenance: 'published' };
const recalled: Source = { ...published, provenance: 'memory' };

/** G_b psi, a, G_s psi. */
// biome-ignore format: a table is read by its columns
const ROWS: readonly (readonly [gasket: string, loadingPsi: number, exponent: number, unloadingPsi: number, source: Source])[] = [
  ['spiral wound, SS/flexible graphite',      2300, 0.237, 13,   published],
  ['spiral wound, SS/PTFE',                   4500, 0.14,  70,   recalled],
  ['corrugated metal, soft iron',             3000, 0.16,  115,  published],
  ['corrugated metal, stainless',             4700, 0.15,  130,  published],
  ['corrugated metal, soft copper',           1500, 0.24,  430,  published],
  ['metal jacketed, soft iron',               2900, 0.23,  15,   published],
  ['metal jacketed, stainless',               2900, 0.23,  15,   published],
  ['metal jacketed, soft copper',             1800, 0.35,  15,   published],
  ['metal jacketed corrugated, soft iron',    8500, 0.134, 230,  published],
  ['flexible graphite sheet',                 970,  0.384, 0.05, recalled],
  ['flat metal, soft Al',                     1525, 0.24,  200,  recalled],
  ['flat metal, soft copper/brass',           5000, 0.133, 259,  recalled],
];

export const TIGHTNESS_CONSTANTS: readonly TightnessConstants[] = ROWS.map(([gasket, loadingPsi, exponent, unloadingPsi, source]) => ({
  gasket,
  loading: psi(loadingPsi),
  exponent,
  unloading: psi(unloadingPsi),
  source,
}));

/**
 * Tightness constants of a gasket type.
 *
 * @example
 * expect(tightnessConstants('metal jacketed, soft copper').value.exponent).toBe(0.35);
 */
export function tightnessConstants(gasket: string): Outcome<TightnessConstants> {
  const found = TIGHTNESS_CONSTANTS.find((one) => one.gasket.toLowerCase() === gasket.trim().toLowerCase());
  return found ? done(found) : refused(notice('gasket-unknown', { gasket }));
}

/** Tightness class C: economy 0.1, standard 1, tight 10. */
export const TIGHTNESS_CLASS = { economy: 0.1, standard: 1, tight: 10 } as const;
/** Efficiency e of assembly: by hand 0.75, by tensioner or ultrasonic measurement 1. */
export const ASSEMBLY_EFFICIENCY = { manual: 0.75, tensioner: 1 } as const;

/**
 * Least tightness parameter in service: T_pmin = 0.1243·C·P, P in psi. Source: PVRC method (0.1243 from memory).
 *
 * @example
 * expect(leastTightness(psi(300), TIGHTNESS_CLASS.standard)).toBeCloseTo(37.29, 2);
 */
export const leastTightness = (pressure: Megapascal, tightnessClass: number): number => 0.1243 * tightnessClass * inPsi(pressure);

/** Tightness parameter to reach at assembly: T_pa = 1.5·T_pmin. Source: PVRC method. */
export const assemblyTightness = (least: number): number => 1.5 * least;

/**
 * Gasket stress that reaches it: S_ya = (G_b/e)·T_pa^a, MPa. Source: PVRC method.
 *
 * @example
 * expect(inPsi(assemblyGasketStress({ loading: psi(2300), exponent: 0.237 }, 55.935, 0.75))).toBeCloseTo(7959, 0);
 */
export const assemblyGasketStress = (
  { loading, exponent }: Pick<TightnessConstants, 'loading' | 'exponent'>,
  tightness: number,
  efficiency: number,
): Megapascal => MPa((loading / efficiency) * tightness ** exponent);

/** Gasket stress left of that in service: S_m2 = S_ya/1.5 − P·A_i/A_g, MPa. Source: PVRC method. */
export const operatingGasketStress = (atAssembly: Megapascal, pressure: Megapascal, insideToGasketArea: number): Megapascal =>
  MPa(atAssembly / 1.5 - pressure * insideToGasketArea);
