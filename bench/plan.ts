import { chooseSetting, mm, N, Nm, planJob } from '../packages/core/src/index.ts';
import { readJob } from '../packages/papers/src/read/index.ts';
import { jobFiles } from './joint-list.ts';
import { median } from './timing.ts';

const read = (joints: number) => {
  const files = jobFiles(joints, 100);
  return () => readJob((path) => files.get(path) ?? 'missing');
};

/** Planning a joint list of growing length; and one pick from a chart of 36 settings. */
export function planBench(): void {
  console.log('\nplan from CSV, 100 bolts a joint (target: 10 000 joints = 1 000 000 bolts in under 10 s and 1 GiB, cost per joint flat)');
  const perJoint: number[] = [];
  for (const joints of [100, 1_000, 10_000]) {
    const work = read(joints);
    const ms = median(joints > 1_000 ? 3 : 9, () => planJob(work().job!));
    perJoint.push((1000 * ms) / joints);
    console.log(`  ${String(joints).padStart(6)} joints  ${ms.toFixed(0).padStart(6)} ms  ${perJoint.at(-1)!.toFixed(1)} µs a joint`);
  }
  console.log(`  cost per joint, 10⁴ over 10²: ${(perJoint[2]! / perJoint[0]!).toFixed(2)}`);
  console.log(`  memory, resident at most: ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MiB`);
  const { job } = read(100)();
  const { chart } = job!.tools[0]!;
  const small = { ...chart, settings: chart.settings.slice(0, 36) };
  const wish = {
    wanted: Nm(400),
    low: Nm(384),
    high: Nm(416),
    arm: mm(3),
    target: N(120_000),
    ceiling: N(160_000),
    aboveCounts: false,
    frictionVariation: 0.05,
  };
  const picks = 200_000;
  const ms = median(5, () => {
    for (let i = 0; i < picks; i += 1) chooseSetting(small, wish);
  });
  console.log(`chart pick, 36 settings: ${((1000 * ms) / picks).toFixed(2)} µs (target under 2 µs)`);
}
