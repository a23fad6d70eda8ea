/** Fastener lots: what their tests say. */

export { type KStatistics, kStatistics } from './k-class.ts';
export { type LotOnTheDay, lotNotices, WITHOUT_DEVICE } from './lot-on-the-day.ts';
export { judgePreInstallation, type PreInstallation } from './pre-installation.ts';
export { type CapacityAssembly, type CapacityTest, judgeRotationalCapacity } from './rotational-capacity-test.ts';
export {
  leastGreatestForce,
  leastRotation,
  SUITABILITY_SOURCE,
  type SuitabilitySystem,
} from './suitability-limits.ts';
export {
  judgeSuitability,
  type SuitabilityTest,
  type SuitabilityVerdict,
  TEST_ASSEMBLIES,
  type TestedAssembly,
} from './suitability-test.ts';
