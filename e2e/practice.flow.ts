import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { violations } from './axe.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { openJoint, prepare, where } from './phone.ts';

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

/** Every screen as it stands: nothing for axe to object to, light and dark, and no sideways scrolling at twice the size. */
async function sound(page: Page, screen: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await violations(page), `${screen}, ${colorScheme}`).toEqual([]);
  }
  await page.setViewportSize({ width: 180, height: 370 });
  const [wide, room] = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
  expect(wide, `${screen} at 200 %`).toBeLessThanOrEqual(room!);
  await page.setViewportSize({ width: 360, height: 740 });
}

test('practice: every screen is accessible, and a bolt is recorded by keyboard alone', async () => {
  const page = await phone.context.newPage();
  await page.goto(server.url);
  await page.getByRole('button', { name: 'Join' }).waitFor();
  await sound(page, 'join');
  await page.goto(`${server.url}/office/settings`);
  await page.getByRole('button', { name: 'Sign in', exact: true }).waitFor();
  await sound(page, 'sign in');
  await page.goto(`${server.url}/verify`);
  await page.getByRole('button', { name: 'Verify' }).waitFor();
  await sound(page, 'verify');
  await page.goto(server.url);
  await page.getByRole('button', { name: 'Practise without a job' }).click();
  await page.getByRole('button', { name: 'Begin practice' }).click();
  await page.getByText('FB-S1').first().waitFor();
  await sound(page, 'today');
  for (const [link, heading] of [
    ['Settings', 'Settings'],
    ['Hand the shift over', 'Hand the shift over'],
    ['Scan a tag', 'Scan a joint’s tag'],
  ] as const) {
    await page.getByRole('link', { name: link }).click();
    await page.getByRole('heading', { name: heading, level: 1 }).waitFor();
    await sound(page, link);
    await page.getByRole('link', { name: 'Back' }).click();
  }
  await page.getByRole('link', { name: /GV-11/ }).click();
  await page.getByRole('button', { name: '+5' }).waitFor();
  await sound(page, 'valve');
  await page.getByRole('link', { name: 'Back' }).click();
  await openJoint(page, 'FB-S1');
  await sound(page, 'before the first bolt');
  for (const link of ['Inspect', 'Loosen']) {
    await page.getByRole('link', { name: link }).click();
    await page.getByRole('heading', { name: `${link} FB-S1` }).waitFor();
    await sound(page, link);
    await page.getByRole('link', { name: 'Back' }).click();
  }
  await page.getByRole('link', { name: 'Back' }).click();
  await prepare(page, 'FB-S1', ['SK-B204']);
  await page.getByText('Done when').waitFor();
  await sound(page, 'tighten');
  await page.getByRole('link', { name: 'Something else' }).click();
  await page.getByRole('heading', { name: /^What happened/ }).waitFor();
  await sound(page, 'something else');
  await page.getByRole('link', { name: 'Back' }).click();

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
