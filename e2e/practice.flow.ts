import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { prepare, where } from './phone.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-practice-'));
let server: RunningServer;
let phone: OpenBrowser;
beforeAll(async () => {
  server = await startServer({}, ['--data', join(folder, 'data')]);
  phone = await openBrowser({ viewport: { width: 360, height: 740 }, bypassCSP: true, reducedMotion: 'reduce' });
});
afterAll(async () => {
  await phone?.close();
  server?.kill('SIGTERM');
  await server?.ended;
  rmSync(folder, { recursive: true });
});

test('practice: a bolt is recorded by keyboard alone', async () => {
  const page = await phone.context.newPage();
  await page.goto(server.url);
  await page.getByRole('button', { name: 'Practise without a job' }).click();
  await page.getByRole('button', { name: 'Begin practice' }).click();
  await page.getByText('FB-S1').first().waitFor();
  await prepare(page, 'FB-S1', ['SK-B204']);

  // by keyboard alone: to the main action, and held
  await page.getByText('Done when').waitFor();
  const before = await where(page);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  for (let press = 0; press < 12; press += 1) {
    await page.keyboard.press('Tab');
    if (await page.evaluate(() => document.activeElement?.textContent?.startsWith('Tightened'))) break;
  }
  await page.keyboard.down(' ');
  await page.waitForFunction((text) => document.querySelector('[class*="pull"]')?.textContent !== text, before);
  await page.keyboard.up(' ');

  // a short press, as rain or a sleeve makes it, records nothing
  const next = await where(page);
  const button = page.getByRole('button', { name: /^Tightened/ });
  await button.click();
  await button.click();
  expect(await where(page)).toBe(next);
  // and a reload finds what was recorded
  await page.reload();
  await page.getByText('Done when').waitFor();
  expect(await where(page)).toBe(next);
}, 180_000);
