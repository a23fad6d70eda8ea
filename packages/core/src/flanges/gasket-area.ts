import { type Millimetre, mm2, type SquareMillimetre } from '../quantity.ts';

/**
 * Gasket area that bolt load is spread over: the whole ring, and half of the legs between the passes of an exchanger.
 *
 *     A_g = π/4·(OD² − ID²) + A_partition/2
 *
 * Source: ASME PCC-1:2013 Appendix O.
 *
 * @example
 * expect(inInch2(gasketArea(inch(5), inch(4)))).toBeCloseTo(7.0686, 4);
 */
export const gasketArea = (outer: Millimetre, inner: Millimetre, partitions: SquareMillimetre = mm2(0)): SquareMillimetre =>
  mm2((Math.PI / 4) * (outer ** 2 - inner ** 2) + partitions / 2);
