import { mkdtempSync, rmSync } from 'node:fs';
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
  readonly close: () => Promise<void>;
}

export async function openBrowser(options: Parameters<typeof chromium.launchPersistentContext>[1] = {}): Promise<OpenBrowser> {
  const profile = mkdtempSync(join(tmpdir(), 'clampwright-browser-'));
  const context = await chromium.launchPersistentContext(profile, { executablePath: '/usr/bin/chromium', args: ARGUMENTS, ...options });
  return {
    context,
    close: async () => {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}
