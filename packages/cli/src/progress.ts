/** Says on a terminal how far the slow part of planning has come; silent in scripts. */
export function interactionProgress(): ((done: number, of: number) => void) | undefined {
  if (!process.stderr.isTTY) return undefined;
  return (done, of) => process.stderr.write(done < of ? `\rhow bolts act on each other: ${done} of ${of} joints` : '\r\x1b[K');
}
