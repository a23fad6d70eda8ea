// `npm run bench [part…]`: medians and ratios of one run on this machine, beside the targets. Nothing here passes or fails.
import { aroundBench } from './around.ts';
import { interactionBench } from './interaction.ts';
import { logBench } from './log.ts';
import { papersBench } from './papers.ts';
import { papersInBench } from './papers-in.ts';
import { planBench } from './plan.ts';
import { simulationBench } from './simulation.ts';
import { torqueBench } from './torque.ts';

const PARTS: Readonly<Record<string, () => unknown>> = {
  plan: planBench,
  torque: torqueBench,
  interaction: interactionBench,
  simulation: simulationBench,
  around: aroundBench,
  log: logBench,
  papers: papersBench,
  'papers-in': papersInBench,
};

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in PARTS));
if (unknown.length > 0) {
  console.error(`There is no part ${unknown.join(', ')}; there are ${Object.keys(PARTS).join(', ')}.`);
  process.exit(2);
}
console.log(`node ${process.version}, one process, medians`);
for (const name of asked.length > 0 ? asked : Object.keys(PARTS)) await PARTS[name]!();
