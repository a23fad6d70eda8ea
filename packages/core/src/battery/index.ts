/** What drives the tool: energy of a bolt, what a battery still does, how many a day takes, other supplies. */
export {
  type Battery,
  type Cells,
  canPush,
  coldShare,
  gaugeInterval,
  type PeakLoad,
  ratedEnergy,
  TEMPERATURES,
  USABLE_SHARE,
  usableEnergy,
  voltageSag,
} from './battery.ts';
export { type Belief, type DrawLine, drawBetweenDrops, drawLine, learnt, learntFromDrop, nextChargeBound } from './learn.ts';
export { greatestPush, type PeakDraw, pushes, resistanceRatio } from './push.ts';
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
export { type BatteryAtHand, type BatteryTurn, type Pull, resumeList, type SharedPulls, sharePulls } from './share-pulls.ts';
export {
  batteriesNeeded,
  batteryNotices,
  beforeNextBolt,
  CONTINUOUS_SHARE,
  canFinish,
  chargeMinutes,
  jointEnergy,
  roadChargingNotices,
  type StepDraw,
  type StepEnding,
  type Supply,
  socketCurrent,
  socketPower,
  supplyNotices,
} from './supply.ts';
export { drawPerBolt, overallEfficiency, type ToolDraw, type TurnOfBolt, tighteningWork, USUAL_DRAW } from './work.ts';
