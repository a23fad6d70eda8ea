import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { handoverBytes, testBook, testSource } from '../packages/record/src/test-handover.ts';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';

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
  const page = await browser.context.newPage();
  await page.goto(`${server.url}/verify`);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await browser.context.setOffline(true);
  await page.reload();
  await page.getByLabel('Choose or drop a handover file').setInputFiles(file);
  await page.getByRole('button', { name: 'Verify' }).click();
  await page.getByRole('heading', { name: 'Verified', exact: true }).waitFor();
  expect(await page.getByText('Every byte fits').isVisible()).toBe(true);

  // one byte of an entry is another: refused, and the place is named
  const bytes = readFileSync(file);
  const at = bytes.indexOf('"bolt-tightened"') + 3;
  bytes[at] = bytes[at]! ^ 1;
  await page.getByLabel('Choose or drop a handover file').setInputFiles({ name: 'changed.handover', mimeType: '', buffer: bytes });
  await page.getByRole('button', { name: 'Verify' }).click();
  await page.getByRole('heading', { name: 'Not verified' }).waitFor();
  const told = Number(/is byte (\d+)/.exec((await page.getByRole('alert').textContent()) ?? '')?.[1]);
  // the line that holds it begins there
  expect(told).toBe(bytes.lastIndexOf(10, at) + 1);
  await browser.context.setOffline(false);
});
