import { existsSync, readFileSync } from 'node:fs';
import { MOST_REPORTED, makeHandover, makeReport } from '@clampwright/server';
import { once } from '@clampwright/store';
import { refuse } from './exit.ts';
import { NO_KEY, onBook } from './on-book.ts';
import { paperOptions } from './paper-edge.ts';
import type { LanguageOptions } from './paper-languages.ts';
import { faultsText } from './plan-text.ts';
import type { DataOption } from './where-data-lies.ts';
import { written } from './written.ts';

export interface HandoverCommandOptions extends DataOption, LanguageOptions {
  /** a PDF of the user's own; false: none */
  readonly report?: string | boolean;
  /** folder with organisation.yaml */
  readonly organisation?: string;
}

/** `clampwright handover JOB FILE`: one file that a stranger can verify, with the report in it. */
export const handoverCommand = (job: string, file: string, options: HandoverCommandOptions): Promise<number> =>
  onBook(job, options, async (store) => {
    const { report } = options;
    if (typeof report === 'string' && !existsSync(report)) return refuse(`There is no file ${report}.`);
    const own = typeof report === 'string' ? readFileSync(report) : report === false ? 'none' : undefined;
    if (own === undefined && (await store.tail(job)).size > MOST_REPORTED)
      process.stderr.write(`More than ${MOST_REPORTED} entries: the file is written without a report. "clampwright report" makes one.\n`);
    const bytes = await makeHandover(store, job, {
      made: new Date(),
      paper: await paperOf(options),
      ...(own === undefined ? {} : { report: own }),
    });
    return bytes ? written(file, bytes) : refuse(NO_KEY);
  });

/** `clampwright report JOB FILE`: the report as a PDF, from the log as it stands. */
export const reportCommand = (job: string, file: string, options: HandoverCommandOptions): Promise<number> =>
  onBook(job, options, async (store) => {
    if (existsSync(file)) return refuse(`${file} is there already and is left as it is.`);
    const bytes = await makeReport(store, job, { made: new Date(), paper: await paperOf(options) });
    return bytes ? written(file, once(bytes)) : refuse(NO_KEY);
  });

async function paperOf({ organisation, data, ...asked }: HandoverCommandOptions) {
  const { options, faults } = await paperOptions(organisation ?? data, 'report, parts', asked);
  if (faults.length > 0) process.stderr.write(`${faultsText(faults, 'metric')}\n`);
  return options;
}
