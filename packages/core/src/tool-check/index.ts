/** Is the tool still what its chart says: checks, certificates, capability, and how much few shots can prove. */
export { type Capability, capability, sixSigmaShare, twoSigmaShare, USUAL_CAPABILITY } from './capability.ts';
export { certificateNotices, type TypedCertificate } from './certificate-fields.ts';
export { boltsToRecheck, type CheckMade, type CheckVerdict, DAILY_SHOTS, judgeShots, type ShotsAtSetting } from './daily-check.ts';
export { relativeDeviation, withinLimit } from './deviation.ts';
export { type Drift, type DriftPoint, driftOf } from './drift.ts';
export { type JointShift, jointShift, SHOTS, type Shots, TEST_JOINTS } from './iso-5393.ts';
export {
  calibrationDue,
  HAND_TOOL_LIMIT,
  HAND_TOOL_TYPES,
  type HandToolType,
  ISO_6789,
  isTestPoint,
  permissibleDeviation,
  TEST_POINTS,
  TORQUE_METHOD_ACCURACY,
  type ToolUse,
  yearsUntilLimit,
} from './iso-6789.ts';
export {
  howeFactor,
  oneSidedFactor,
  shotsForProof,
  type ToleranceInterval,
  toleranceInterval,
  twoSidedFactor,
} from './tolerance-interval.ts';
export { expandedUncertainty, lowerPreloadShare, resolutionUncertainty } from './uncertainty.ts';
