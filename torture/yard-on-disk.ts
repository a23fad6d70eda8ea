import { spawn } from 'node:child_process';
import { idOf, type NoteKey, sign, utf8 } from '../packages/record/src/index.ts';
import { testKeys } from '../packages/record/src/test-book.ts';
import { enrolDevice, openEnrolment } from '../packages/server/src/log/devices.ts';
import { logKey } from '../packages/server/src/log/log-key.ts';
import { openStore, type Store, type Where } from '../packages/store/src/index.ts';
import { type Device, httpTransport, memoryShelf, openDevice, type Transport } from '../packages/sync/src/index.ts';

export interface EnrolledPhone {
  readonly device: Device;
  readonly to: (server: string) => Transport;
}
export interface YardOnDisk {
  readonly phones: readonly EnrolledPhone[];
  readonly logKey: NoteKey;
}

export const jobId = (n: number): string =>
  idOf(
    'job',
    Uint8Array.from({ length: 16 }, (_, i) => (n >>> (8 * (i % 4))) & 255),
  );

/** A store with phones enrolled for some jobs, as the server would have done it. */
export async function yardOnDisk(where: Where, count: number, jobs: readonly string[], now = () => new Date()): Promise<YardOnDisk> {
  const store = await openStore(where);
  try {
    const log = await logKey(store);
    const phones: EnrolledPhone[] = [];
    for (let n = 1; n <= count; n += 1) phones.push(await enrolled(store, n, jobs, now));
    return { phones, logKey: log.note };
  } finally {
    await store.close();
  }
}

async function enrolled(store: Store, n: number, jobs: readonly string[], clock: () => Date): Promise<EnrolledPhone> {
  const keys = testKeys(n);
  const now = new Date();
  const { code } = await openEnrolment(store, `phone ${n}`, jobs, now);
  const signature = Buffer.from(sign(utf8(`clampwright-enrol-1\n${code}`), keys)).toString('hex');
  const { token } = (await enrolDevice(store, { code, key: Buffer.from(keys.publicKey).toString('hex'), signature }, now))!;
  return {
    device: openDevice({ shelf: memoryShelf(), keys, now: clock, offsetMinutes: () => 0 }),
    to: (server) => httpTransport({ server, token, timeoutMs: 5000 }),
  };
}

export interface RunningServer {
  readonly url: string;
  readonly pid: number;
  /** exit code, or the signal that ended it */
  readonly ended: Promise<number | string>;
  readonly kill: (signal: NodeJS.Signals) => void;
  readonly output: () => string;
}

/** The server as it ships, in a process of its own. */
export async function startServer(
  env: Readonly<Record<string, string>>,
  args: readonly string[],
  before: readonly string[] = [],
  product = '.',
): Promise<RunningServer> {
  const port = args.includes('--port') ? [] : ['--port', '0'];
  const command = [...before, process.execPath, `${product}/packages/cli/bin/clampwright.mjs`, 'serve', ...port, '--quiet', ...args];
  const child = spawn(command[0]!, command.slice(1), { env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
  let output = '';
  const ended = new Promise<number | string>((resolve) => child.once('exit', (code, signal) => resolve(code ?? signal ?? 'unknown')));
  child.stderr.on('data', (data) => {
    output += String(data);
  });
  const url = await new Promise<string>((resolve, reject) => {
    child.stdout.on('data', (data) => {
      output += String(data);
      const found = /at (http\S+)\/ /.exec(output)?.[1];
      if (found) resolve(found);
    });
    ended.then((how) => reject(new Error(`the server ended (${how}): ${output}`)), reject);
  });
  return { url, pid: child.pid!, ended, kill: (signal) => child.kill(signal), output: () => output };
}
