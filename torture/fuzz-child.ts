// One reader fuzzed in a process of its own: `fuzz-child.ts READER SEED SECONDS`. Says where it is, so that whoever watches it can tell a hang.
import { writeSync } from 'node:fs';
import { remedy, says, whereabouts } from '../packages/words/src/index.ts';
import { FUZZED, type FuzzedName } from './fuzz-readers.ts';
import { randomBy } from './random.ts';

const [reader, first, seconds] = process.argv.slice(2) as [FuzzedName, string, string];
const SLOW_MS = 2000;
const fuzzed = await FUZZED[reader]();
const until = Date.now() + Number(seconds) * 1000;
let [inputs, refused, crashed, slow, said] = [0, 0, 0, 0, 0];
for (let seed = Number(first); Date.now() < until; seed += 1) {
  if (Date.now() - said > 200) {
    writeSync(1, `at ${seed}\n`);
    said = Date.now();
  }
  // time of the processor counts where it is less: a busy machine is no fault of a reader
  const [began, used] = [performance.now(), process.cpuUsage()];
  try {
    const notices = await fuzzed.next(randomBy(seed));
    if (notices.length > 0) refused += 1;
    for (const one of notices.slice(0, 50))
      for (const text of [says(one), remedy(one), whereabouts(one)])
        if (text.includes('undefined')) throw new Error(`a text holds a gap: ${text}`);
  } catch (error) {
    crashed += 1;
    if (crashed <= 5)
      writeSync(
        1,
        `crash ${seed} ${String((error as Error).stack)
          .split('\n')
          .slice(0, 4)
          .join(' | ')}\n`,
      );
  }
  const { user, system } = process.cpuUsage(used);
  const took = Math.min(performance.now() - began, (user + system) / 1000);
  if (took > SLOW_MS) {
    slow += 1;
    writeSync(1, `slow ${seed} ${took.toFixed(0)} ms\n`);
  }
  inputs += 1;
}
await fuzzed.close?.();
writeSync(1, `done ${inputs} ${refused} ${crashed} ${slow} ${Math.round(process.resourceUsage().maxRSS / 1024)}\n`);
process.exit(0);
