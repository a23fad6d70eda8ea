/** Says on a terminal how far the slow part of planning has come; silent in scripts. */
export function interactionProgress(): ((done: number, of: number) => void) | undefined {
  if (!process.stderr.isTTY) return undefined;
  return (done, of) => process.stderr.write(done < of ? `\rhow bolts act on each other: ${done} of ${of} joints` : '\r\x1b[K');
}

const BAR = 30;

/** A bar with the time that is left; silent in scripts. */
export function blockProgress(): (done: number, of: number) => void {
  if (!process.stderr.isTTY) return () => undefined;
  const start = performance.now();
  return (done, of) => {
    if (done >= of) return void process.stderr.write('\r\x1b[K');
    const filled = Math.round((BAR * done) / of);
    const left = ((performance.now() - start) * (of - done)) / done / 1000;
    process.stderr.write(
      `\r\x1b[K${'█'.repeat(filled)}${'·'.repeat(BAR - filled)} ${done} of ${of} blocks, ${time(left)} left (Ctrl-C keeps what is finished)`,
    );
  };
}

const time = (seconds: number) => (seconds < 90 ? `${Math.ceil(seconds)} s` : `${Math.ceil(seconds / 60)} min`);
