/** One function: job in, plan out. */
export { compareTags } from './compare-tags.ts';
export { drawForPlan, inspectPlan } from './drawn-inspection.ts';
export type { SupplyPlan } from './effort.ts';
export type { InspectionPlan } from './inspection-plan.ts';
export type { InteractionPlan, RoundPlan, RoundSetting } from './interaction-plan.ts';
export type { JointRounds } from './joint-rounds.ts';
export { jointWithTool } from './joint-with-tool.ts';
export { type LooseningAsked, type LooseningOfJoint, looseningOf } from './loosening-of.ts';
export { mayBeIssued, onlyWaits } from './may-be-issued.ts';
export type {
  JointPlan,
  KitItem,
  Permits,
  Plan,
  PlannedJob,
  PreloadScatter,
  RotationPlan,
  SequencePlan,
  StepPlan,
  StepSetting,
  SubgroupPlan,
  Sums,
  TighteningPlan,
  ToolState,
  Verdict,
} from './plan.ts';
export { planInteraction, type RoundsMemory, roundsOf, type WantedRounds, wantedRounds, withRounds } from './plan-interaction.ts';
export { ENGINE, type JointMemory, jointMemory, planJob } from './plan-job.ts';
export { smallestPitch } from './reach-notices.ts';
export { simulatedJob } from './simulated-job.ts';
export { UNMEASURED_VARIATION } from './step-settings.ts';
export { swapTool } from './swap-tool.ts';
export { orderOfRound, type TightenedAlike, tightenedAlike } from './tightened-alike.ts';
export type { SafeStop, WorkPlan } from './work-plan.ts';
