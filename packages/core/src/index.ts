/**
 * What is true of bolts: pure functions and cited tables. No I/O, no clock, no randomness of its own.
 * Start at `planJob` in ./plan: one function, job in, plan out; it calls all the rest.
 */
// Quantities, sources, outcomes, notices

// Before the first bolt
export * from './assembly/index.ts';
// Batteries and other supplies
export * from './battery/index.ts';
// Setting charts
export * from './chart/index.ts';
export { addDays, addMonths, type CivilDate, civilDate, daysBetween } from './date.ts';
// How long it takes
export * from './duration/index.ts';
// Fasteners
export * from './fasteners/index.ts';
// Pipe flanges
export * from './flanges/index.ts';
export * from './inspection/index.ts';
// Elastic interaction
export * from './interaction/index.ts';
// The job: what a plan is made from
export * from './job/index.ts';
// Loosening
export * from './loosening/index.ts';
// Lots and inspection
export * from './lots/index.ts';
// What bolts clamp
export * from './members/index.ts';
export {
  levelOf,
  NOTICE_GROUPS,
  NOTICES,
  type Notice,
  type NoticeCode,
  type NoticeOf,
  notice,
  type ParamsOf,
  type Place,
} from './notice/index.ts';
export type { Level, Param } from './notice/level.ts';
export type { Measure } from './notice/measure.ts';
export { type Done, done, type Outcome, type Refused, refused } from './outcome.ts';
// The plan
export * from './plan/index.ts';
export * from './quantity.ts';
// Random numbers from a seed
export * from './random/index.ts';
// Structural bolts (RCSC)
export * from './rcsc/index.ts';
// Reaction and clearance
export * from './reaction/index.ts';
// Retightening
export * from './retightening/index.ts';
// Rule sets
export * from './rules/index.ts';
// Scatter
export * from './scatter/index.ts';
// Schedules
export * from './schedule/index.ts';
// Tightening sequence
export * from './sequence/index.ts';
// Simulation
export * from './simulation/index.ts';
export type { Cited, Provenance, Source } from './source.ts';
// Stiffness
export * from './stiffness/index.ts';
// Tool checks
export * from './tool-check/index.ts';
// Torque and preload
export * from './torque/index.ts';
// Valves
export * from './valve/index.ts';
