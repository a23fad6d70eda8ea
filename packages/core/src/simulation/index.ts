/** The whole job played forward, with drawn friction, tool error and the mistakes crews make. */
export { type Chance, chanceOf } from './chance.ts';
export { type Gathering, gatherBlocks } from './gather-blocks.ts';
export { type MistakeRates, mistakeRates, NO_MISTAKES, USUAL_MISTAKES } from './mistakes.ts';
export { blocksOf, RUNS_PER_BLOCK, type SimulationTask, simulateBlock, simulationTask } from './simulate.ts';
export type { AngleSetting, SimulatedJob, SimulatedJoint, SimulatedPart, SimulatedRound, TorqueSetting } from './simulated-job.ts';
export {
  type Distribution,
  type NotSimulated,
  type SimulatedOutcome,
  type SimulationResult,
  simulationResult,
} from './simulation-result.ts';
export { addTally, emptyTally, type JointTally, type Tally } from './tally.ts';
