import { basename, dirname, join } from 'node:path';
import { type Job, levelOf, type Notice, type Plan, planInteraction, planJob, swapTool } from '@clampwright/core';
import { cardsHtml, MAPPING_FILE, markedCopy, type ReadOptions, readJob } from '@clampwright/papers';
import { remedy, says, whereabouts } from '@clampwright/words';
import { EXIT, refuse } from './exit.ts';
import { font } from './font.ts';
import { isFolder, jobFolder } from './job-folder.ts';
import { meansOf } from './means-of.ts';
import type { LanguageOptions } from './paper-languages.ts';
import { faultsText, planText } from './plan-text.ts';
import { interactionProgress } from './progress.ts';
import { NotOurs, writeOutput } from './write-output.ts';

export interface PlanOptions extends LanguageOptions {
  readonly json?: boolean;
  readonly out?: string;
  /** write plan.pdf for review, too */
  readonly pdf?: boolean;
  /** `TAG=SERIAL`: plan this joint with that tool instead */
  readonly swap?: readonly string[];
  /** `HEADING=MEANING`: what a heading means; remembered in the job folder */
  readonly map?: readonly string[];
  /** file for a copy of the lists in which every fault is marked */
  readonly faults?: string;
}

export interface Planned {
  readonly job?: Job;
  readonly plan?: Plan;
  readonly faults: readonly Notice[];
  /** what is to be remembered of headings */
  readonly mapping?: string;
}

export function planFolder(folder: string, swaps: readonly string[] = [], options: ReadOptions = {}): Planned {
  const { job, notices, mapping } = readJob(jobFolder(folder), options);
  if (!job) return { faults: notices };
  const asked = swaps.reduce(swapped, job);
  const plan = planInteraction(asked, planJob(asked), interactionProgress());
  return { job: asked, plan, faults: [...notices, ...chartFaults(plan)], ...(mapping === undefined ? {} : { mapping }) };
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

/** `clampwright plan FOLDER`: prints the plan, writes plan.json and cards.html, and plan.pdf where asked; the input is not touched. */
export async function planCommand(folder: string, options: PlanOptions): Promise<number> {
  if (!isFolder(folder)) {
    return refuse(`There is no folder ${folder}. “clampwright init ${folder}” makes one with an example.`);
  }
  const means = meansOf(options.map ?? []);
  if (!means) return refuse('--map: write HEADING=MEANING, for example --map "Bolt Ø=size" or --map "Weight=ignore"');
  const { job, plan, faults, mapping } = planFolder(folder, options.swap, { means });
  const written: string[] = [];
  try {
    if (options.faults !== undefined) {
      const copy = await markedCopy(jobFolder(folder), faults, job && { units: job.units });
      if (copy) {
        writeOutput(dirname(options.faults), { [basename(options.faults)]: copy });
        written.push(options.faults);
      }
    }
    if (!plan) {
      if (!options.json) return refuse(`Nothing could be planned.\n${faultsText(faults, 'metric')}`);
      process.stdout.write(`${JSON.stringify({ faults: plainFaults(faults) }, null, 2)}\n`);
      return EXIT.unusable;
    }
    if (mapping !== undefined) {
      writeOutput(folder, { [MAPPING_FILE]: mapping });
      written.push(join(folder, MAPPING_FILE));
    }
    const out = options.out ?? join(folder, 'plan');
    // the typesetter is loaded when it is called for, so that planning starts without it
    const reviewed = options.pdf ? await (await import('./plan-paper.ts')).planPaper(folder, plan, options) : undefined;
    const files = {
      'plan.json': `${JSON.stringify(plan, null, 1)}\n`,
      'cards.html': cardsHtml(plan, { font: font() }),
      ...(reviewed ? { 'plan.pdf': reviewed } : {}),
    };
    writeOutput(out, files);
    written.push(...Object.keys(files).map((name) => join(out, name)));
  } catch (error) {
    if (!(error instanceof NotOurs)) throw error;
    return refuse(`${error.message}. Move it, or choose another name.`);
  }
  if (options.json) process.stdout.write(`${JSON.stringify({ plan, faults: plainFaults(faults) }, null, 2)}\n`);
  else process.stdout.write(`${planText(plan, faults)}\nWritten: ${written.join(', ')}\n`);
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
