import { inNewtonMetre, lbfFt } from '../quantity.ts';

/**
 * What happens to preload when the nut factor is another than planned: K_planned/K_actual − 1, as a share.
 *
 * @example
 * expect(preloadErrorFromNutFactor(0.125, 0.17)).toBeCloseTo(-0.265, 3);
 */
export const preloadErrorFromNutFactor = (planned: number, actual: number): number => planned / actual - 1;

const RATIO = inNewtonMetre(lbfFt(1));

/**
 * What happens to preload when a figure is read in the wrong unit of torque, as a share: −26 % when lbf·ft is taken for N·m,
 * +36 % the other way round.
 *
 * @example
 * expect(preloadErrorFromUnit('lbf·ft', 'N·m')).toBeCloseTo(-0.2624, 4);
 */
export const preloadErrorFromUnit = (meant: 'N·m' | 'lbf·ft', entered: 'N·m' | 'lbf·ft'): number =>
  meant === entered ? 0 : meant === 'lbf·ft' ? 1 / RATIO - 1 : RATIO - 1;
