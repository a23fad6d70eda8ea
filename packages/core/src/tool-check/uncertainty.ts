/**
 * Expanded uncertainty of independent contributions: U = k·√Σu². Source: JCGM 100 (GUM), 5.1.2 and 6.2.
 *
 * @example
 * expect(expandedUncertainty([1, 0.8, 0.5])).toBeCloseTo(2.7495, 4);
 */
export const expandedUncertainty = (standard: readonly number[], coverageFactor = 2): number => coverageFactor * Math.hypot(...standard);

/** Standard uncertainty of a scale that shows steps of `resolution`: half a step, rectangular, resolution/√12. Source: JCGM 100 (GUM), 4.3.7. */
export const resolutionUncertainty = (resolution: number): number => resolution / Math.sqrt(12);

/**
 * Preload that all but the lowest 5 % reach, as a share of what the torque aims at: m·(1 − z·√(V_T² + V_k²)).
 *
 * - m torque over the torque for the target; V_T tool, V_k friction; z 1.645
 *
 * Source: root-sum-square of tool and k-factor scatter; EN 1090-2 multiplies by 1.10.
 *
 * @example
 * expect(lowerPreloadShare(1.1, 0.02, 0.06)).toBeCloseTo(0.9856, 4);
 */
export const lowerPreloadShare = (multiplier: number, tool: number, friction: number, z = 1.645): number =>
  multiplier * (1 - z * Math.hypot(tool, friction));
