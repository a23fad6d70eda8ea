/** Pipe flanges: bolting and dimensions, scatter and torque of the bolts as one group. */

export {
  ALIGNMENT_LIMITS,
  type AlignmentFault,
  type AlignmentReading,
  alignmentFaults,
  alignmentSource,
  b313Source,
  PIPING_ALIGNMENT,
} from './alignment.ts';
export type { AsmeFlange } from './asme-flange.ts';
export {
  type AssemblyBoltStress,
  type AssemblyBoltStressInput,
  assemblyBoltStress,
  assemblyBoltStressSource,
  type StressCheck,
  USUAL_BOLT_LIMITS,
  USUAL_REMAINING_SHARE,
} from './assembly-bolt-stress.ts';
export { B165_FLANGES, b165Flange } from './b16.5.ts';
export { B1647_FLANGES, b1647Flange } from './b16.47.ts';
export { DISASSEMBLY, type DisassemblyInput, disassemblySource, loosenInSteps } from './disassembly.ts';
export { type ElongationInput, studElongation } from './elongation.ts';
export { en1092Flange, PN_FLANGES, type PnFlange, pnFlangeHole } from './en1092-1.ts';
export {
  en1591Source,
  type FlangeTightening,
  flangeTorque,
  flangeTorqueArm,
  greatestForce,
  groupScatter,
  leastNominalForce,
  type Scatter,
  singleBoltScatter,
} from './en1591.ts';
export { boltChord, studLength, totalBoltArea } from './flange-bolting.ts';
export { gasketArea } from './gasket-area.ts';
export { GASKET_FACTORS, type GasketFactors, gasketFactors } from './gasket-factors.ts';
export { type BoltDesign, boltDesign, type GasketLoadInput, type GasketLoads, gasketLoads } from './gasket-load.ts';
export { GASKET_STRESS_LIMITS, type GasketStressLimits, gasketStressLimits } from './gasket-stress.ts';
export {
  basicSeatingWidth,
  effectiveSeatingWidth,
  type FacingColumn,
  type FacingSketch,
  type FacingWidths,
  gasketReactionDiameter,
} from './gasket-width.ts';
export {
  FLANGE_ROUNDS,
  type FlangeRound,
  GAP_CHECK_POINTS,
  passScheduleSource,
  RELAXATION_WAIT_HOURS,
  roundTorque,
  SNUG_TORQUE,
  START_UP_RETORQUE,
  snugShare,
} from './pass-schedule.ts';
export { PCC1_TABLE_STRESS, PCC1_TORQUES, pcc1Torque, scaledTorque } from './pcc1-torque-table.ts';
export {
  ASSEMBLY_EFFICIENCY,
  assemblyGasketStress,
  assemblyTightness,
  leastTightness,
  operatingGasketStress,
  TIGHTNESS_CLASS,
  TIGHTNESS_CONSTANTS,
  type TightnessConstants,
  tightnessConstants,
} from './pvrc.ts';
