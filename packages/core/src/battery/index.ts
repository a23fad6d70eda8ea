/** What drives the tool: energy of a bolt, what a battery still does, how many a day takes, other supplies. */
export {
  type Battery,
  type Cells,
  coldShare,
  gaugeInterval,
  ratedEnergy,
  TEMPERATURES,
  USABLE_SHARE,
  usableEnergy,
} from './battery.ts';
export { batteryNotices } from './battery-notices.ts';
export { type Belief, drawBetweenDrops, learnt, learntFromDrop } from './learn.ts';
export { CHARGE_CONFIDENCE, type DrawLine, drawLine, nextChargeBound } from './log-statistics.ts';
export { type Supply, supplyNotices } from './other-supplies.ts';
export {
  canPush,
  greatestPush,
  type PeakDraw,
  type PeakLoad,
  pushes,
  resistanceRatio,
  transferablePower,
  voltageSag,
} from './push.ts';
export {
  type BoltsRemaining,
  boltBounds,
  boltsPerCharge,
  boltsRemaining,
  chanceItLasts,
  type DrawBelief,
  doneWith,
  type EnergyLeft,
  energyBehind,
  pullsLasting,
  STOP_CONFIDENCE,
} from './remaining.ts';
export { CONTINUOUS_SHARE, roadChargingNotices, socketCurrent, socketPower } from './road-charging.ts';
export { type BatteryAtHand, type BatteryTurn, type Pull, resumeList, type SharedPulls, sharePulls } from './share-pulls.ts';
export { type GaugeSeen, type StillDoes, stillDoes, unlearntDraw } from './still-does.ts';
export { batteriesNeeded, beforeNextBolt, canFinish, chargeMinutes, jointEnergy, type StepDraw, type StepEnding } from './supply.ts';
export { drawPerBolt, overallEfficiency, type ToolDraw, type TurnOfBolt, tighteningWork, USUAL_DRAW } from './work.ts';
