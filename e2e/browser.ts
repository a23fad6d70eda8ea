import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, chromium } from 'playwright-core';

/** Debian's Chromium, quiet on the network: everything a page asks for beyond this machine fails. */
const ARGUMENTS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface OpenBrowser {
  readonly context: BrowserContext;
  /** Ends every process of it at once, as a flat battery does, and opens it again on the same profile. */
  readonly killAndOpen: () => Promise<OpenBrowser>;
  readonly close: () => Promise<void>;
}
type Options = Parameters<typeof chromium.launchPersistentContext>[1];

/** `more`: arguments of the browser beside the usual ones. */
export const openBrowser = (options: Options = {}, more: readonly string[] = []): Promise<OpenBrowser> =>
  openOn(mkdtempSync(join(tmpdir(), 'clampwright-browser-')), {
    executablePath: '/usr/bin/chromium',
    args: [...ARGUMENTS, ...more],
    ...options,
  });

async function openOn(profile: string, options: Options): Promise<OpenBrowser> {
  const context = await chromium.launchPersistentContext(profile, options);
  return {
    context,
    killAndOpen: async () => {
      for (const pid of processesOf(profile)) process.kill(pid, 'SIGKILL');
      await context.close().catch(() => undefined);
      for (const lock of ['SingletonLock', 'SingletonCookie', 'SingletonSocket']) rmSync(join(profile, lock), { force: true });
      return openOn(profile, options);
    },
    close: async () => {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}

const processesOf = (profile: string): number[] =>
  readdirSync('/proc')
    .map(Number)
    .filter((pid) => pid > 0 && commandOf(pid).includes(`--user-data-dir=${profile}`));
function commandOf(pid: number): string {
  try {
    return readFileSync(`/proc/${pid}/cmdline`, 'utf8');
  } catch {
    return '';
  }
}
