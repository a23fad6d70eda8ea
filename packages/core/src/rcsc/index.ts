/** Structural bolts by RCSC, AISC and AASHTO: pretension, verification, turn, indicators, tests, arbitration. Each value with its edition. */
export { ARBITRATION, arbitrationTorque, arcOf, boltsToArbitrate } from './arbitration.ts';
export {
  DTI_FEELER,
  DTI_TEST_GAP,
  type Dti,
  type DtiType,
  directTensionIndicator,
  f959Source,
  leastRefusalsInstalled,
  mostRefusalsAtVerification,
} from './dti.ts';
export { RCSC_EDITIONS, type RcscEdition, rcscEdition, rcscSource } from './editions.ts';
export { MINIMUM_PRETENSION, minimumPretension, pretensionOf } from './minimum-pretension.ts';
export {
  greatestShortBoltTorque,
  greatestTestTorque,
  INITIAL_TENSION_PLUS,
  initialTestTension,
  passesRotationalCapacity,
  ROTATIONAL_CAPACITY_ASSEMBLIES,
  type RotationalCapacityReading,
  rotationalCapacitySource,
  testRotation,
  turnTestTension,
} from './rotational-capacity.ts';
export {
  type FayingClass,
  nominalSlipResistance,
  SLIP_COEFFICIENTS,
  SLIP_MULTIPLIER,
  type SlipInput,
  slipCoefficient,
} from './slip.ts';
export { type StructuralGrade, type StructuralGroup, structuralGrade } from './structural-grade.ts';
export { nutRotation, rotationTolerance, TURN_BANDS } from './turn-of-nut.ts';
export { leastTwistOffTension, type TwistOffGrade } from './twist-off.ts';
export {
  VERIFICATION_ASSEMBLIES,
  VERIFICATION_FACTOR,
  verificationTension,
  WRENCH_VERIFICATIONS_PER_WORK_DAY,
} from './verification-tension.ts';
export { washerThicknessOver } from './washer-rule.ts';
