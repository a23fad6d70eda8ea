/** Loosening: what it takes, fresh and aged. */
export * from './breakaway.ts';
export { BREAKAWAY, type BreakawayRatio, FASTENER_STATES, type FastenerState, USABLE_TORQUE } from './conditions.ts';
export { type LooseningPlan, type LooseningTask, planLoosening, type ReleaseStage } from './plan-loosening.ts';
export { mayBeReused, type Reuse, type ReuseVerdict } from './reuse.ts';
