/** How bolts of one joint act on each other: compliance from dimensions, play-back, the one-factorisation schedule. */
export { circulant, type JointCompliance, jointCompliance, MOST_BOLTS } from './joint-compliance.ts';
export { copyState, type JointState, looseJoint } from './joint-state.ts';
export { lastPassTargets, onePassTargets } from './one-pass.ts';
export { type PlateGroup, plateCompliance } from './plate-compliance.ts';
export { play, pull, type Round, release, type StepRule, type Turn, turn, untilNoNutMoves } from './play.ts';
export { type RingSection, ringCompliance } from './ring-compliance.ts';
export type { Layer as SectionLayer } from './ring-mesh.ts';
