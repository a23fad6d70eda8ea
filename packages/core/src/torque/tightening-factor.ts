import { N, type Newton } from '../quantity.ts';
import type { Source } from '../source.ts';

/** Ways of tightening as VDI 2230 tells them apart. */
export type TighteningMethod =
  | 'ultrasonic elongation'
  | 'mechanical elongation'
  | 'yield controlled'
  | 'angle controlled'
  | 'hydraulic tensioning'
  | 'torque found by tests on the joint'
  | 'torque, friction estimated, class B'
  | 'torque, friction estimated, class A'
  | 'impact wrench';

/** Guide range of α_A. */
export interface TighteningFactor {
  readonly low: number;
  readonly high: number;
  readonly source: Source;
}

const guide = (low: number, high: number, provenance: 'memory' | 'published'): TighteningFactor => ({
  low,
  high,
  source: { standard: 'VDI 2230-1', edition: '2003', clause: 'Table A8', provenance },
});

/**
 * Tightening factor α_A = F_M,max/F_M,min by method. Guide values: the low end needs many tests or a stiff joint, the high end
 * is for what is usual. Source: VDI 2230-1:2003 Table A8 (2015 likewise; a later printing may begin ultrasonic elongation at 1.1).
 *
 * @example
 * expect(TIGHTENING_FACTORS['impact wrench'].high).toBe(4);
 */
export const TIGHTENING_FACTORS: Readonly<Record<TighteningMethod, TighteningFactor>> = {
  'ultrasonic elongation': guide(1.05, 1.2, 'memory'),
  'mechanical elongation': guide(1.1, 1.5, 'memory'),
  'yield controlled': guide(1.2, 1.4, 'memory'),
  'angle controlled': guide(1.2, 1.4, 'memory'),
  'hydraulic tensioning': guide(1.2, 1.6, 'published'),
  'torque found by tests on the joint': guide(1.4, 1.6, 'published'),
  'torque, friction estimated, class B': guide(1.6, 2, 'published'),
  'torque, friction estimated, class A': guide(1.7, 2.5, 'memory'),
  'impact wrench': guide(2.5, 4, 'memory'),
};

/** Scatter ± about the mid value in the 1986 edition, as shares. Yield and angle control are far tighter there than later. */
export const TIGHTENING_SCATTER_1986 = {
  'hydraulic tensioning': { low: 0.09, high: 0.23 },
  'torque found by tests on the joint': { low: 0.17, high: 0.23 },
  'torque, friction estimated': { low: 0.23, high: 0.28 },
  'power driver': { low: 0.26, high: 0.43 },
  'yield or angle controlled': { low: 0.05, high: 0.12 },
  source: { standard: 'VDI 2230-1', edition: '1986', provenance: 'published' } satisfies Source,
} as const;

/**
 * Tightening factor of a scatter ±s about the mid preload: α_A = (1 + s)/(1 − s), 0 ≤ s < 1. Source: VDI 2230-1:2015 section 5.4.3.
 *
 * @example
 * expect(tighteningFactorOf(0.23)).toBeCloseTo(1.6, 2);
 */
export const tighteningFactorOf = (scatter: number): number => (1 + scatter) / (1 - scatter);

/**
 * Scatter about the mid preload of a tightening factor: s = (α_A − 1)/(α_A + 1), a share. Source: VDI 2230-1:2015 section 5.4.3.
 *
 * @example
 * expect(scatterOf(1.6)).toBeCloseTo(0.231, 3);
 */
export const scatterOf = (tighteningFactor: number): number => (tighteningFactor - 1) / (tighteningFactor + 1);

/**
 * Least preload when the greatest is known: F_M,min = F_M,max/α_A, N. Source: VDI 2230-1:2015 eq. R6.
 *
 * @example
 * expect(inKilonewton(leastPreload(kN(118.8), 2))).toBeCloseTo(59.4, 10);
 */
export const leastPreload = (greatest: Newton, tighteningFactor: number): Newton => N(greatest / tighteningFactor);

/**
 * Preload band about a nominal value: F·(1 − Γ − loss) to F·(1 + Γ), N.
 *
 * - Γ share: 0.25 lubricated, 0.35 as received by torque
 * - loss: share of the nominal preload expected to go by relaxation, creep and temperature
 *
 * Source: NASA-STD-5020; NASA NSTS 08307.
 *
 * @example
 * expect(preloadBand(kN(100), 0.25)).toEqual({ least: 75000, greatest: 125000 });
 */
export const preloadBand = (nominal: Newton, uncertainty: number, loss = 0): { readonly least: Newton; readonly greatest: Newton } => ({
  least: N(nominal * (1 - uncertainty - loss)),
  greatest: N(nominal * (1 + uncertainty)),
});
