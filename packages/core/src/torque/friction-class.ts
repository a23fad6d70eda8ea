import type { Source } from '../source.ts';

export type FrictionClassId = 'A' | 'B' | 'C' | 'D' | 'E';

/** A range of coefficients of friction, the same for thread and bearing face, at room temperature. */
export interface FrictionClass {
  readonly id: FrictionClassId;
  readonly lower: number;
  /** class E has no upper limit: `null` */
  readonly upper: number | null;
  /** surfaces and lubricants that usually fall into it */
  readonly typical: string;
}

export const frictionClassSource: Source = { standard: 'VDI 2230-1', edition: '2015', clause: 'Table A5', provenance: 'published' };

/**
 * Friction classes for thread and bearing face. Size the largest torque by the lowest credible friction of the class, and the
 * smallest preload by the highest. Source: VDI 2230-1:2003 and 2015 Table A5.
 *
 * @example
 * expect(FRICTION_CLASSES.B.upper).toBe(0.16);
 */
export const FRICTION_CLASSES: Readonly<Record<FrictionClassId, FrictionClass>> = {
  A: { id: 'A', lower: 0.04, upper: 0.1, typical: 'solid lubricant as coat or paste, wax melt, wax dispersion' },
  B: {
    id: 'B',
    lower: 0.08,
    upper: 0.16,
    typical: 'solid lubricant, wax dispersion, grease, oil, as delivered; coating with lubricant in it',
  },
  C: { id: 'C', lower: 0.14, upper: 0.24, typical: 'as delivered, lightly oiled; bare phosphate or zinc; wax or paste on stainless' },
  D: { id: 'D', lower: 0.2, upper: 0.35, typical: 'oil on stainless; bare zinc or hot-dip zinc' },
  E: { id: 'E', lower: 0.3, upper: null, typical: 'bare zinc-iron or zinc-nickel, stainless, aluminium, magnesium' },
};
