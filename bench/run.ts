// `npm run bench`: medians and ratios of one run on this machine, beside the targets. Nothing here passes or fails.
import { aroundBench } from './around.ts';
import { interactionBench } from './interaction.ts';
import { logBench } from './log.ts';
import { planBench } from './plan.ts';
import { simulationBench } from './simulation.ts';
import { torqueBench } from './torque.ts';

console.log(`node ${process.version}, one process, medians`);
planBench();
torqueBench();
interactionBench();
await simulationBench();
aroundBench();
await logBench();
