import { spawnSync } from 'node:child_process';

/** Debian's own Python carries Debian's NumPy; another one may stand before it on the path. */
const PYTHONS = ['/usr/bin/python3', 'python3'];

/** Runs a script where NumPy and SciPy are, and gives the numbers it prints; `undefined` where they are not. */
export function python(script: string, input = ''): number[] | undefined {
  for (const command of PYTHONS) {
    const { status, stdout } = spawnSync(command, ['-c', script], { encoding: 'utf8', input });
    if (status === 0) return stdout.trim().split(/\s+/).map(Number);
  }
  return undefined;
}

export const NO_NUMPY = '  NumPy and SciPy are not here; no ratio (Debian: python3-numpy, python3-scipy)';
