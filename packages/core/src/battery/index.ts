/** What drives the tool: energy of a bolt, what a battery still does, how many a day takes, other supplies. */
export {
  type Battery,
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
export { type Belief, type DrawLine, drawBetweenDrops, drawLine, learnt, nextChargeBound } from './learn.ts';
export { type BoltsRemaining, boltBounds, boltsPerCharge, boltsRemaining, chanceItLasts, type DrawBelief } from './remaining.ts';
export {
  batteriesNeeded,
  batteryNotices,
  beforeNextBolt,
  CONTINUOUS_SHARE,
  canFinish,
  chargeMinutes,
  jointEnergy,
  planSupply,
  type StepDraw,
  type StepEnding,
  type Supply,
  type SupplyPlan,
  socketCurrent,
  socketPower,
  supplyNotices,
} from './supply.ts';
export { drawPerBolt, overallEfficiency, type ToolDraw, type TurnOfBolt, tighteningWork, USUAL_DRAW } from './work.ts';
