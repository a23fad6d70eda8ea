/** Fastener lots: what their tests say. */

export { type KStatistics, kStatistics } from './k-class.ts';
export {
  leastGreatestForce,
  leastRotation,
  SUITABILITY_SOURCE,
  type SuitabilitySystem,
} from './suitability-limits.ts';
