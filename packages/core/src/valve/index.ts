/** Gate valves: what the stem needs, and whether a tool may turn it at all. */
export { planValve, STOP_SHORT_TURNS, VALVE_CAUTIONS, type ValveCaution, type ValvePlan, type ValveTask } from './plan-valve.ts';
export {
  type GateLoad,
  helpedStemFactor,
  movingTorque,
  PERSON,
  rimForce,
  type StemThread,
  stemFactor,
  stemLead,
  stemLeadAngle,
  stemStress,
  stemThrust,
  stemTorque,
  strokeWork,
  turnsOfStroke,
  VALVE_SOURCE,
  waterworksTurns,
} from './stem.ts';
