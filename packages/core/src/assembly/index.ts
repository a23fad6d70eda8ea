/** Before the first bolt: what is looked at, and whether a flange closes evenly. */
export {
  ASSEMBLY_CHECKS,
  type AssembledJoint,
  type AssemblyCheck,
  assemblyChecks,
  LEAST_CLEAR_THREADS,
  LEAST_PROTRUSION,
  type RequiredCheck,
} from './checks.ts';
export { type GapReading, type GapVerdict, judgeGaps } from './gap-readings.ts';
export {
  type FitUp,
  fitUpNotices,
  type GasketRecord,
  gasketNotices,
  type MeasuredBolt,
  slipSurfaceNotices,
  threadNotices,
} from './measured-checks.ts';
