import { type ByteSource, bytesOf, readSections } from '../container/read.ts';
import { HANDOVER_LINE } from './format.ts';

const MOST_REPORT_BYTES = 512 * 1024 * 1024;

/** The report of a handover file, its bytes held against their hash; undefined where it has none. For a file that was verified. */
export async function readReport(source: ByteSource): Promise<Uint8Array | undefined> {
  for await (const section of readSections(source, HANDOVER_LINE))
    if (section.name === 'report') return bytesOf(source, section, { most: MOST_REPORT_BYTES });
  return undefined;
}
