import { joinBytes } from '@clampwright/record';

const NEWLINE = 10;
const END = Uint8Array.of(NEWLINE);

/** Lines, each ended by a newline. Canonical JSON holds none of its own. */
export const linesOf = (lines: readonly Uint8Array[]): Uint8Array => joinBytes(...lines.flatMap((line) => [line, END]));

/** The lines of some bytes; undefined where the last is not ended: it was cut short. */
export function readLines(bytes: Uint8Array): Uint8Array[] | undefined {
  const lines: Uint8Array[] = [];
  let start = 0;
  for (let end = bytes.indexOf(NEWLINE); end >= 0; end = bytes.indexOf(NEWLINE, start)) {
    lines.push(bytes.slice(start, end));
    start = end + 1;
  }
  return start === bytes.length ? lines : undefined;
}
