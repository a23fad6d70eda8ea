/** How long it takes: minutes a joint, crews, shifts, the time between two steps. */
export { BREAK_MINUTES, forecastWork, type ToldPulls, type WorkForecast } from './forecast.ts';
export {
  type CrewDay,
  type JointWork,
  jointMinutes,
  secondStepInTime,
  shareOut,
  TWO_STEP_HOURS,
} from './joint-time.ts';
export { PACE_SOURCE, type Pace, USUAL_PACE } from './pace.ts';
