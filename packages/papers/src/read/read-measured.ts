import type { Notice } from '@clampwright/core';
import { headingMemory } from './heading-memory.ts';
import type { JudgedTest } from './judged-test.ts';
import type { OpenFile } from './open-file.ts';
import type { ReadOptions } from './read-job.ts';
import { readTests } from './read-tests.ts';

/** A file of measured series, judged (see `readTests`), with what was said of its headings now. `mapping`: as of `readJob`. */
export function readMeasured(
  open: OpenFile,
  file: string,
  { means = [] }: ReadOptions = {},
): { readonly judged: readonly JudgedTest[]; readonly notices: readonly Notice[]; readonly mapping?: string } {
  const memory = headingMemory(open, means);
  const { judged, notices } = readTests(open, file, memory);
  const mapping = memory.text();
  return { judged, notices: [...notices, ...memory.notices()], ...(mapping === undefined ? {} : { mapping }) };
}
