// `npm run bench`: medians and ratios of one run on this machine, beside the targets. Nothing here passes or fails.
import { planBench } from './plan.ts';
import { torqueBench } from './torque.ts';

console.log(`node ${process.version}, one process, medians`);
planBench();
torqueBench();
