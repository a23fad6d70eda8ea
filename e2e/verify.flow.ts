import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { handoverBytes, testBook, testSource } from '../packages/record/src/test-handover.ts';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { refusesAnotherByte, verifyAlone } from './stranger.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-verify-'));
const file = join(folder, 'splice.handover');
let server: RunningServer;
let browser: OpenBrowser;
beforeAll(async () => {
  writeFileSync(file, await handoverBytes(testSource(testBook())));
  server = await startServer({}, ['--data', join(folder, 'data')]);
  browser = await openBrowser({ viewport: { width: 360, height: 740 } });
});
afterAll(async () => {
  await browser?.close();
  server?.kill('SIGTERM');
  await server?.ended;
  rmSync(folder, { recursive: true });
});

test('a stranger verifies a handover file in the browser, without network', async () => {
  const page = await verifyAlone(browser.context, server.url, file);
  expect(await page.getByText('Every byte fits').isVisible()).toBe(true);
  await refusesAnotherByte(page, file, 'bolt-tightened');
  await browser.context.setOffline(false);
});
