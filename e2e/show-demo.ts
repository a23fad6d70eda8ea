import { type ChildProcess, spawn } from 'node:child_process';

export interface Shown {
  readonly url: string;
  readonly stop: () => Promise<void>;
}

/** Starts the built command line as a user would and waits for the address it prints. */
export function showDemo(): Promise<Shown> {
  const child = spawn('node', ['packages/cli/bin/clampwright.mjs', 'show', 'demo'], { stdio: ['ignore', 'pipe', 'inherit'] });
  return new Promise((resolve, reject) => {
    let printed = '';
    child.once('exit', (code) => reject(new Error(`clampwright show ended with ${code}: ${printed}`)));
    child.stdout.on('data', (chunk: Buffer) => {
      printed += chunk.toString();
      const url = /http:\/\/\S+/.exec(printed)?.[0];
      if (url) resolve({ url, stop: () => stop(child) });
    });
  });
}

const stop = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    child.removeAllListeners('exit');
    child.once('exit', () => resolve());
    child.kill('SIGTERM');
  });
