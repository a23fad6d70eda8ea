import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
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

/** Goes on by Tab until what has the focus says one of these. */
async function reach(page: Page, says: RegExp): Promise<string> {
  for (let press = 0; press < 80; press += 1) {
    await page.keyboard.press('Tab');
    const found = await page.evaluate(() => {
      const one = document.activeElement;
      return one instanceof HTMLInputElement ? (one.labels?.[0]?.textContent ?? '') : (one?.textContent ?? '');
    });
    if (says.test(found.trim())) return found.trim();
  }
  throw new Error(`not reached by Tab: ${says}`);
}
async function press(page: Page, says: RegExp): Promise<void> {
  await reach(page, says);
  await page.keyboard.press('Enter');
}
async function type(page: Page, label: RegExp, text: string): Promise<void> {
  await reach(page, label);
  await page.keyboard.type(text);
}

test('practice: a joint from its first look to the signature, by keyboard alone', async () => {
  const page = phone.context.pages().at(-1)!;
  await page.goto(server.url);
  await page.getByText('FB-S3').first().waitFor();
  await type(page, /^Find a joint by its tag/, 'FB-S3');
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'FB-S3', exact: true }).waitFor();
  await press(page, /^So it is on the steel/);
  await page.getByRole('heading', { name: 'Look at the assembly' }).waitFor();
  for (let left = await page.getByRole('checkbox').count(); left > 0; ) {
    await page.keyboard.press('Tab');
    if (!(await page.evaluate(() => document.activeElement?.matches('input[type=checkbox]:not(:checked)')))) continue;
    await page.keyboard.press(' ');
    left -= 1;
  }
  await press(page, /^All of it is right/);
  await press(page, /^In firm contact/);
  await press(page, /^Go to the bolts/);
  const done = page.getByText('Every bolt of every step is recorded.');
  for (let pull = 0; pull < 60 && !(await done.isVisible()); pull += 1) {
    const found = await reach(page, /^(Tightened|Second person|Sign as crew)/);
    if (found.startsWith('Sign')) break;
    const before = found.startsWith('Tightened') ? await where(page) : await page.locator('main').textContent();
    const held = found.startsWith('Tightened');
    await (held ? page.keyboard.down(' ') : page.keyboard.press('Enter'));
    await page.waitForFunction(([text, all]) => document.querySelector(all ? 'main' : '[class*="pull"]')?.textContent !== text, [
      before,
      !held,
    ] as const);
    if (held) await page.keyboard.up(' ');
  }
  await done.waitFor();
  await press(page, /^Sign as crew/);
  await page.getByRole('button', { name: 'Sign as crew' }).waitFor();
  await press(page, /^Sign as crew/);
  await page.getByLabel('Find a joint by its tag').waitFor();
}, 180_000);
