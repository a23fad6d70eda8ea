import type { Plan } from '@clampwright/core';
import type { PaperOptions } from '@clampwright/papers/out';
import { EXIT, refuse } from './exit.ts';
import { isFolder } from './job-folder.ts';
import { paperOptions } from './paper-edge.ts';
import type { LanguageOptions } from './paper-languages.ts';
import { planFolder } from './plan-command.ts';
import { faultsText } from './plan-text.ts';
import { NotOurs, writeOutput } from './write-output.ts';

export interface OutOption extends LanguageOptions {
  readonly out: string;
}

/** Plans a folder and writes what comes of it: faults on standard error, files whole or not at all, what was written on standard output. */
export async function plannedFor(
  folder: string,
  asked: OutOption,
  name: string,
  work: (plan: Plan, options: PaperOptions) => Promise<Readonly<Record<string, string | Uint8Array>>>,
): Promise<number> {
  const { out } = asked;
  if (!isFolder(folder)) return refuse(`There is no folder ${folder}.`);
  const { plan, faults } = planFolder(folder);
  if (!plan) return refuse(`Nothing could be planned.\n${faultsText(faults, 'metric')}`);
  const { options, faults: ofOrganisation } = await paperOptions(folder, name, asked);
  const told = [...faults, ...ofOrganisation];
  if (told.length > 0) process.stderr.write(`${faultsText(told, plan.job.units)}\n`);
  try {
    const files = await work(plan, options);
    writeOutput(out, files);
    for (const [file, bytes] of Object.entries(files)) process.stdout.write(`${out}/${file}: ${Buffer.byteLength(bytes)} bytes\n`);
    return plan.sums.stop > 0 ? EXIT.stops : EXIT.fine;
  } catch (error) {
    if (error instanceof NotOurs) return refuse(`${error.message}. Move it, or choose another folder with --out.`);
    throw error;
  }
}
