import { join } from 'node:path';
import { type Job, levelOf, type Notice, type Plan, planInteraction, planJob, swapTool } from '@clampwright/core';
import { cardsHtml, readJob } from '@clampwright/papers';
import { remedy, says, whereabouts } from '@clampwright/words';
import { EXIT, refuse } from './exit.ts';
import { font } from './font.ts';
import { isFolder, jobFolder } from './job-folder.ts';
import { faultsText, planText } from './plan-text.ts';
import { interactionProgress } from './progress.ts';
import { NotOurs, writeOutput } from './write-output.ts';

export interface PlanOptions {
  readonly json?: boolean;
  readonly out?: string;
  /** write plan.pdf for review, too */
  readonly pdf?: boolean;
  /** `TAG=SERIAL`: plan this joint with that tool instead */
  readonly swap?: readonly string[];
}

export interface Planned {
  readonly job?: Job;
  readonly plan?: Plan;
  readonly faults: readonly Notice[];
}

export function planFolder(folder: string, swaps: readonly string[] = []): Planned {
  const { job, notices } = readJob(jobFolder(folder));
  if (!job) return { faults: notices };
  const asked = swaps.reduce(swapped, job);
  const plan = planInteraction(asked, planJob(asked), interactionProgress());
  return { job: asked, plan, faults: [...notices, ...chartFaults(plan)] };
}

/** What is wrong with a chart stands in a file, as every other fault, whether or not a joint uses the tool. */
const chartFaults = (plan: Plan) => plan.tools.flatMap(({ notices }) => notices.filter(({ code }) => levelOf(code) === 'fault'));

/** A swap that cannot be carried out ends the command: planning with the wrong tool in silence would be worse. */
export class SwapRefused extends Error {}

function swapped(job: Job, swap: string): Job {
  const [tag, serials] = swap.split('=');
  const found = tag !== undefined && serials ? swapTool(job, tag, serials.split('+')) : undefined;
  if (!found) throw new SwapRefused(`--swap ${swap}: write TAG=SERIAL with the tag of a joint of this job`);
  return found;
}

/** `clampwright plan FOLDER`: prints the plan, writes plan.json and cards.html, and plan.pdf where asked; never touches the input. */
export async function planCommand(folder: string, options: PlanOptions): Promise<number> {
  if (!isFolder(folder)) {
    return refuse(`There is no folder ${folder}. “clampwright init ${folder}” makes one with an example.`);
  }
  const { plan, faults } = planFolder(folder, options.swap);
  if (!plan) {
    if (!options.json) return refuse(`Nothing could be planned.\n${faultsText(faults, 'metric')}`);
    process.stdout.write(`${JSON.stringify({ faults: plainFaults(faults) }, null, 2)}\n`);
    return EXIT.unusable;
  }
  const out = options.out ?? join(folder, 'plan');
  // the typesetter is loaded when it is called for, so that planning starts without it
  const reviewed = options.pdf ? await (await import('./plan-paper.ts')).planPaper(folder, plan) : undefined;
  const files = {
    'plan.json': `${JSON.stringify(plan, null, 1)}\n`,
    'cards.html': cardsHtml(plan, { font: font() }),
    ...(reviewed ? { 'plan.pdf': reviewed } : {}),
  };
  try {
    writeOutput(out, files);
  } catch (error) {
    if (!(error instanceof NotOurs)) throw error;
    return refuse(`${error.message}. Move it, or choose another folder with --out.`);
  }
  if (options.json) process.stdout.write(`${JSON.stringify({ plan, faults: plainFaults(faults) }, null, 2)}\n`);
  else
    process.stdout.write(
      `${planText(plan, faults)}\nWritten: ${Object.keys(files)
        .map((name) => join(out, name))
        .join(', ')}\n`,
    );
  return plan.sums.stop > 0 || faults.some(({ code }) => levelOf(code) === 'fault') ? EXIT.stops : EXIT.fine;
}

const plainFaults = (faults: readonly Notice[]) =>
  faults.map((one) => ({
    code: one.code,
    level: levelOf(one.code),
    where: whereabouts(one),
    place: one.place,
    says: says(one),
    remedy: remedy(one),
  }));
