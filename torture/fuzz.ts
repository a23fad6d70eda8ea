import { spawn } from 'node:child_process';
import { build } from 'esbuild';
import type { Count } from './count.ts';
import { FUZZED, type FuzzedName } from './fuzz-readers.ts';

/** A reader that says nothing for so long hangs. */
const SILENT_MS = 20_000;
const MOST_MIB = 900;

/** Every reader of what others made, on changed inputs by seed: none crashes, none takes more than 2 s, none takes memory beyond its bound. */
export async function fuzz(count: Count, secondsEach: number): Promise<void> {
  await bundle();
  const left = Object.keys(FUZZED) as FuzzedName[];
  // two at a time: each is a process of its own
  const lane = async () => {
    for (let reader = left.shift(); reader !== undefined; reader = left.shift())
      judge(count, reader, secondsEach, await run(reader, secondsEach));
  };
  await Promise.all([lane(), lane()]);
}

const CHILD = 'torture/dist/fuzz-child.mjs';

/** The readers as they ship, in one file that starts at once. */
const bundle = () =>
  build({
    entryPoints: ['torture/fuzz-child.ts'],
    outfile: CHILD,
    bundle: true,
    external: ['better-sqlite3', '@node-rs/argon2', 'pg-native', 'web-ifc'],
    platform: 'node',
    format: 'esm',
    target: 'node20',
    jsx: 'automatic',
    banner: { js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);" },
    logLevel: 'error',
  });

function judge(count: Count, reader: FuzzedName, secondsEach: number, { lines, hung }: Awaited<ReturnType<typeof run>>): void {
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

function run(reader: FuzzedName, seconds: number): Promise<{ readonly lines: readonly string[]; readonly hung: boolean }> {
  const seed = Number(process.env.CLAMPWRIGHT_FUZZ_SEED ?? 1);
  const child = spawn(process.execPath, ['--max-old-space-size=600', CHILD, reader, String(seed), String(seconds)], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
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
