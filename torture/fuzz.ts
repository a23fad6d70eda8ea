import { spawn } from 'node:child_process';
import type { Count } from './count.ts';
import { FUZZED, type FuzzedName } from './fuzz-readers.ts';

/** A reader that says nothing for so long hangs. */
const SILENT_MS = 20_000;
const MOST_MIB = 900;

/** Every reader of what others made, on changed inputs by seed: none crashes, none takes more than 2 s, none takes memory beyond its bound. */
export async function fuzz(count: Count, secondsEach: number): Promise<void> {
  for (const reader of Object.keys(FUZZED) as FuzzedName[]) {
    const { lines, hung } = await run(reader, secondsEach);
    const done = lines
      .find((line) => line.startsWith('done '))
      ?.split(' ')
      .slice(1)
      .map(Number);
    const told = lines.filter((line) => /^(crash|slow) /.test(line)).slice(0, 5);
    count.check(`${reader} does not hang`, !hung, `after ${lines.findLast((line) => line.startsWith('at '))}`);
    count.check(`${reader} does not crash`, done?.[2] === 0, [...told, ...lines.slice(-2)].join('; '));
    count.check(`${reader} takes no more than 2 s for an input`, done?.[3] === 0, told.join('; '));
    count.check(`${reader} stays below ${MOST_MIB} MiB`, (done?.[4] ?? Number.POSITIVE_INFINITY) < MOST_MIB, `${done?.[4]} MiB`);
    console.log(
      `fuzz ${reader}: ${done?.[0] ?? 0} inputs in ${secondsEach} s, ${done?.[1] ?? 0} refused or remarked on, ${done?.[4] ?? '?'} MiB`,
    );
  }
}

function run(reader: FuzzedName, seconds: number): Promise<{ readonly lines: readonly string[]; readonly hung: boolean }> {
  const seed = Number(process.env.CLAMPWRIGHT_FUZZ_SEED ?? 1);
  const child = spawn(
    process.execPath,
    ['--max-old-space-size=600', '--import', 'tsx', 'torture/fuzz-child.ts', reader, String(seed), String(seconds)],
    {
      stdio: ['ignore', 'pipe', 'pipe'],
    },
  );
  return new Promise((resolve) => {
    const lines: string[] = [];
    let hung = false;
    const silent = () => {
      hung = true;
      child.kill('SIGKILL');
    };
    let watch = setTimeout(silent, 3 * SILENT_MS);
    const take = (text: Buffer) => {
      clearTimeout(watch);
      watch = setTimeout(silent, SILENT_MS);
      lines.push(...text.toString().split('\n').filter(Boolean));
      if (lines.length > 5000) lines.splice(0, 4000);
    };
    child.stdout.on('data', take);
    child.stderr.on('data', take);
    child.on('close', () => {
      clearTimeout(watch);
      resolve({ lines, hung });
    });
  });
}
