import { basename, dirname } from 'node:path';
import { levelOf } from '@clampwright/core';
import { readMeasured } from '@clampwright/papers';
import { EXIT, refuse } from './exit.ts';
import { isFile, jobFolder } from './job-folder.ts';
import { fails, judgedText } from './judged-text.ts';
import { meansOf } from './means-of.ts';
import { faultsText } from './plan-text.ts';
import { rememberHeadings } from './remember-headings.ts';

interface JudgeOptions {
  readonly json?: boolean;
  /** `HEADING=MEANING`: what a heading means; remembered beside the file */
  readonly map?: readonly string[];
  /** book into which the series are entered, and the day they were measured on */
  readonly book?: string;
  readonly done?: string;
  readonly write?: boolean;
  readonly data: string;
}

/** `clampwright judge FILE`: what measured series say; with a book, they are entered into it. */
export async function judgeCommand(file: string, options: JudgeOptions): Promise<number> {
  if (!isFile(file)) return refuse(`There is no file ${file}.`);
  const means = meansOf(options.map ?? []);
  if (!means) return refuse('--map: write HEADING=MEANING');
  const { judged, notices, mapping } = readMeasured(jobFolder(dirname(file)), basename(file), { means });
  const unkept = rememberHeadings(file, mapping);
  if (unkept !== undefined) return refuse(unkept);
  if (options.json) process.stdout.write(`${JSON.stringify({ judged, faults: notices }, null, 2)}\n`);
  else {
    if (notices.length > 0) process.stdout.write(`${faultsText(notices, 'metric')}\n\n`);
    process.stdout.write(`${judged.map(judgedText).join('\n')}\n`);
  }
  if (options.book !== undefined) {
    if (notices.some(({ code }) => levelOf(code) === 'fault') || judged.length === 0)
      return refuse('Nothing was entered: a log cannot be mended afterwards. Correct the file, then enter it whole.');
    const { enterTests } = await import('./enter-tests.ts');
    const entered = await enterTests(options.book, file, judged, options);
    if (entered !== EXIT.fine) return entered;
  }
  return notices.length > 0 || judged.some(fails) ? EXIT.stops : EXIT.fine;
}
