/** How long it takes: minutes a joint, crews, shifts, the time between two steps. */
export {
  type CrewDay,
  type JointWork,
  jointMinutes,
  secondStepInTime,
  shareOut,
  TWO_STEP_HOURS,
} from './joint-time.ts';
export { PACE_SOURCE, type Pace, USUAL_PACE } from './pace.ts';
