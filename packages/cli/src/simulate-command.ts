import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { ENGINE, mistakeRates, type Notice, simulatedJob, simulationResult, simulationTask } from '@clampwright/core';
import { EXIT, refuse } from './exit.ts';
import { isFolder } from './job-folder.ts';
import { planFolder } from './plan-command.ts';
import { faultsText } from './plan-text.ts';
import { playBlocks } from './play-blocks.ts';
import { blockProgress } from './progress.ts';
import { simulationText } from './simulation-text.ts';
import { NotOurs, writeOutput } from './write-output.ts';

export interface SimulateOptions {
  readonly runs: string;
  readonly seed: string;
  readonly workers?: string;
  /** `NAME=SHARE`: another rate of a mistake */
  readonly rate?: readonly string[];
  readonly out?: string;
  readonly json?: boolean;
}

/** `clampwright simulate FOLDER`: plays the planned job many times and says how often a bolt ends outside its window. */
export async function simulateCommand(folder: string, options: SimulateOptions): Promise<number> {
  if (!isFolder(folder)) return refuse(`There is no folder ${folder}.`);
  const rates = mistakeRates(Object.fromEntries((options.rate ?? []).map(nameAndShare)));
  const asked = simulationTask(Number(options.runs), Number(options.seed), rates.ok ? rates.value : ({} as never));
  const wrong: Notice[] = [...(rates.ok ? [] : rates.notices), ...(asked.ok ? [] : asked.notices)];
  const workers = Number(options.workers ?? availableParallelism());
  const cores = Number.isInteger(workers) && workers >= 1 && workers <= MOST_WORKERS;
  if (wrong.length > 0 || !asked.ok || !cores) {
    return refuse([...(wrong.length > 0 ? [faultsText(wrong, 'metric')] : []), ...(cores ? [] : [WORKERS])].join('\n'));
  }
  const { plan, job: read, faults } = planFolder(folder);
  if (!plan || !read) return refuse(`Nothing could be planned.\n${faultsText(faults, 'metric')}`);
  const { job, notSimulated } = simulatedJob(read, plan);
  const stop = new AbortController();
  const interrupt = () => stop.abort();
  process.once('SIGINT', interrupt);
  process.stderr.write(`Playing ${options.runs} runs of ${job.joints.length} joints on ${workers} core(s) …\n`);
  const tally = await playBlocks(job, asked.value, { workers, progress: blockProgress(), stopped: stop.signal });
  process.removeListener('SIGINT', interrupt);
  const result = simulationResult(ENGINE, job, notSimulated, asked.value, tally);
  const out = options.out ?? join(folder, 'plan');
  try {
    writeOutput(out, { 'simulation.json': `${JSON.stringify(result, null, 1)}\n` });
  } catch (error) {
    if (!(error instanceof NotOurs)) throw error;
    return refuse(`${error.message}. Move it, or choose another folder with --out.`);
  }
  if (options.json) process.stdout.write(`${JSON.stringify(result, null, 2)}\n`);
  else process.stdout.write(`${simulationText(plan, result)}\nWritten: ${join(out, 'simulation.json')}\n`);
  return result.runs < asked.value.runs ? EXIT.stops : EXIT.fine;
}
const MOST_WORKERS = 256;
const WORKERS = `  --workers wants a whole number from 1 to ${MOST_WORKERS}.`;

function nameAndShare(text: string): [string, number] {
  const [name = '', share = ''] = text.split('=');
  return [name, share === '' ? Number.NaN : Number(share)];
}
