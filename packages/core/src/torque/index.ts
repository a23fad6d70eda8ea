/** Torque ↔ preload: friction, wedge, stresses, failure. */
export { type AssemblyPreloadInput, assemblyPreload, type VdiEdition } from './assembly-preload.ts';
export { axialStress, combinedStress, type TorsionSection, torsionalStress, yieldUtilisation } from './combined-stress.ts';
export { byCoefficients, byNutFactor, type CoefficientFriction, equalSplit, type Friction, type NutFactorFriction } from './friction.ts';
export { FRICTION_CLASSES, type FrictionClass, type FrictionClassId, frictionClassSource } from './friction-class.ts';
export { bearingFrictionFrom, threadFrictionFrom, torqueCoefficient, totalFriction } from './iso-16047.ts';
export { bearingArea, bearingPressure, LIMIT_PRESSURES, type LimitPressureEdition, limitPressure } from './limit-pressure.ts';
export type { LimitPressureEntry } from './limit-pressure-table.ts';
export { preloadErrorFromNutFactor, preloadErrorFromUnit } from './mistakes.ts';
export {
  FLANGE_STUD_NUT_FACTORS,
  flangeNutFactor,
  NUT_FACTORS,
  type NutFactorEntry,
  ROTATIONAL_CAPACITY_NUT_FACTOR,
  shortNutFactor,
} from './nut-factor.ts';
export { PRELOAD_UNCERTAINTIES, type PreloadUncertainty } from './preload-uncertainty.ts';
export { flankFrictionAngle, leadAngle, selfLockingFriction, type ThreadSize, threadArm, type WedgeForm } from './thread-arm.ts';
export {
  leastPreload,
  preloadBand,
  scatterOf,
  TIGHTENING_FACTORS,
  TIGHTENING_SCATTER_1986,
  type TighteningFactor,
  type TighteningMethod,
  tighteningFactorOf,
} from './tightening-factor.ts';
export {
  type Estimate,
  looseningTorque,
  preloadForTorque,
  shankTorsion,
  type TorqueSplit,
  torqueArm,
  torqueForPreload,
  torqueSplit,
} from './tightening-torque.ts';
export { rootYieldTorque, shankTorqueAtYield, TORSION_STRENGTH_RATIO, wringOffTorque } from './torsional-failure.ts';
