import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import {
  blocksOf,
  mm,
  NO_MISTAKES,
  type SimulatedJob,
  type SimulatedJoint,
  type SimulationTask,
  simulateBlock,
} from '../packages/core/src/index.ts';
import { taskOf } from './interaction.ts';
import { NO_NUMPY, python } from './python.ts';

const torque = (level: number) => ({
  kind: 'torque' as const,
  tool: 0,
  repeatability: 0.02,
  level,
  arm: mm(3.1),
  beside: [0.95 * level, 1.05 * level],
});
const part = (count: number) => ({
  bolts: Array.from({ length: count }, (_, i) => i),
  lot: 0,
  lotMean: 0.02,
  boltToBolt: 0.04,
  target: 200_000,
  window: { low: 180_000, high: 230_000 },
  pitch: mm(3),
  resilience: 2e-6,
});
const round = (count: number, level: number) => ({
  turns: Array.from({ length: count }, (_, i) => [i]),
  settings: [torque(level)],
  settingOf: new Array<number>(count).fill(0),
});

/** 1 000 bolts in two steps, each by itself; a ring of 24 in one star round at a third and three rounds at the full setting. */
const ALONE: SimulatedJoint = { tag: 'alone', parts: [part(1000)], rounds: [round(1000, 140_000), round(1000, 200_000)] };

function ring(): SimulatedJoint {
  const task = taskOf(24);
  const by = (turns: readonly number[], level: number) => ({ ...round(24, level), turns: turns.map((bolt) => [bolt]) });
  const [star, circular] = [task.star as number[], task.circular as number[]];
  return {
    tag: 'ring',
    parts: [part(24)],
    rounds: [by(star, task.target / 3), by(star, task.target), by(circular, task.target), by(circular, task.target)],
    members: { compliance: task.compliance, gasketSet: 0 },
  };
}

const jobOf = (...joints: readonly SimulatedJoint[]): SimulatedJob => ({
  tools: [{ serial: 'T', certificate: 0.01 }],
  lots: ['L'],
  joints,
});

/** The joint without interaction, vectorised: every draw of every run at once. */
const NUMPY = `
import time, numpy as np
rng = np.random.Generator(np.random.Philox(7)); runs, bolts = 1000, 1000
def work():
    tool = 0.01 * rng.standard_normal((runs, 1)); lot = 0.02 * rng.standard_normal((runs, 1))
    own = 1 + lot + tool + 0.04 * rng.standard_normal((runs, bolts))
    force = np.zeros((runs, bolts))
    for level in (140e3, 200e3):
        force = np.maximum(force, level * np.maximum(0.05, own + 0.02 * rng.standard_normal((runs, bolts))))
    out = (force < 180e3) | (force > 230e3)
    return out.any(axis=1).sum(), force.min(axis=1), force.max(axis=1)
work(); t = []
for _ in range(5):
    s = time.perf_counter(); work(); t.append(time.perf_counter() - s)
print(2 * runs * bolts / sorted(t)[2] / 1e6)
`;

/** Bolt-tightenings a second of one core; the middle of five. */
function speed(job: SimulatedJob, runs: number): number {
  const task: SimulationTask = { runs, seed: 7, rates: NO_MISTAKES };
  const once = () => {
    const start = performance.now();
    let pulls = 0;
    for (let block = 0; block < blocksOf(task); block += 1) pulls += simulateBlock(job, task, block).joints[0]!.pulls;
    return (1000 * pulls) / (performance.now() - start);
  };
  once();
  return Array.from({ length: 5 }, once).sort((a, b) => a - b)[2]!;
}

/** Pulls a second of so many cores together: workers that each play the same blocks. */
async function onCores(cores: number, job: SimulatedJob, blocks: number): Promise<number> {
  const task: SimulationTask = { runs: 1_000_000, seed: 7, rates: NO_MISTAKES };
  const workers = Array.from(
    { length: cores },
    () => new Worker(pathToFileURL('packages/cli/dist/simulate-worker.mjs'), { workerData: { job, task } }),
  );
  const play = (from: number) =>
    Promise.all(
      workers.map(async (worker, at) => {
        let pulls = 0;
        for (let block = 0; block < blocks; block += 1) {
          const answer = new Promise<{ readonly tally: { readonly joints: readonly { readonly pulls: number }[] } }>((resolve) =>
            worker.once('message', resolve),
          );
          worker.postMessage(from + block * cores + at);
          pulls += (await answer).tally.joints[0]!.pulls;
        }
        return pulls;
      }),
    );
  await play(0);
  const start = performance.now();
  const pulls = (await play(1000)).reduce((sum, one) => sum + one, 0);
  const rate = (1000 * pulls) / (performance.now() - start);
  await Promise.all(workers.map((worker) => worker.terminate()));
  return rate;
}

const millions = (rate: number) => `${(rate / 1e6).toFixed(2)} million/s`;

/** How fast a job is played, beside the same model in NumPy; on two cores; and whether memory grows with the runs. */
export async function simulationBench(): Promise<void> {
  console.log('\nsimulation, bolt-tightenings of one core');
  const alone = jobOf(ALONE);
  const plain = speed(alone, 500);
  console.log(`  bolts each by itself: ${millions(plain)} (target 5)`);
  const [numpy] = python(NUMPY) ?? [];
  if (numpy === undefined) console.log(NO_NUMPY);
  else console.log(`    the same model vectorised in NumPy: ${numpy.toFixed(2)} million/s; ratio ${(plain / 1e6 / numpy).toFixed(2)}`);
  console.log(`  ring of 24 whose bolts act on each other: ${millions(speed(jobOf(ring()), 500))} (target 0.5)`);
  const [one, two] = [await onCores(1, alone, 30), await onCores(2, alone, 30)];
  console.log(`  two cores over one: ${(two / one).toFixed(2)} (target 1.8)`);
  const heap = (runs: number) => {
    speed(alone, runs);
    globalThis.gc?.();
    return process.memoryUsage().rss / 2 ** 20;
  };
  const [few, many] = [heap(200), heap(4000)];
  console.log(`  memory after 200 runs and after 4 000: ${few.toFixed(0)} and ${many.toFixed(0)} MiB`);
}
