import { dirname, join } from 'node:path';
import { MAPPING_FILE } from '@clampwright/papers';
import { NotOurs, writeOutput } from './write-output.ts';

/** Keeps beside a file what its headings were said to mean; gives why it cannot be kept, where it cannot. */
export function rememberHeadings(file: string, mapping: string | undefined): string | undefined {
  if (mapping === undefined) return undefined;
  try {
    writeOutput(dirname(file), { [MAPPING_FILE]: mapping });
    process.stderr.write(`Written: ${join(dirname(file), MAPPING_FILE)}\n`);
    return undefined;
  } catch (error) {
    if (error instanceof NotOurs) return `${error.message}. Move it.`;
    throw error;
  }
}
