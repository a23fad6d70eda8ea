import { afterAll, beforeAll, expect, test } from 'vitest';
import { violations } from './axe.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { type Shown, showDemo } from './show-demo.ts';

let shown: Shown;
let browser: OpenBrowser;
beforeAll(async () => {
  shown = await showDemo();
  browser = await openBrowser({ viewport: { width: 1440, height: 900 }, bypassCSP: true });
});
afterAll(async () => {
  await browser?.close();
  await shown?.stop();
});

test('a planner sees the verdict of every joint, follows the keyboard to one and finds its setting', async () => {
  const page = await browser.context.newPage();
  const foreign: string[] = [];
  const errors: string[] = [];
  page.on('request', (request) => {
    if (!request.url().startsWith(shown.url) && !request.url().startsWith('data:')) foreign.push(request.url());
  });
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await page.goto(shown.url);
  const text = (await page.locator('main').textContent()) ?? '';
  for (const tag of ['FB-S1', 'FB-S2', 'FB-S3', 'PH-F1', 'PH-F2', 'PH-F3', 'PH-F4', 'TB-R1', 'TB-R2']) expect(text).toContain(tag);
  for (const verdict of ['Ready', 'Attention', 'Stop']) expect(text.toLowerCase()).toContain(verdict.toLowerCase());
  expect(text).toContain('SK-P019');
  expect(await violations(page)).toEqual([]);

  await page.getByRole('link', { name: 'FB-S1', exact: true }).first().focus();
  await page.keyboard.press('Enter');
  await page.waitForURL('**/joint/FB-S1');
  const joint = ((await page.locator('main').textContent()) ?? '').replace(/\u00a0/g, ' ');
  expect(joint).toContain('gear 3, step 6');
  expect(joint).toContain('247 kN');
  expect(await page.locator('svg').count()).toBeGreaterThan(0);
  expect(await violations(page)).toEqual([]);
  expect(foreign).toEqual([]);
  expect(errors).toEqual([]);
});

test('no page scrolls sideways on a phone, and a wrong address is answered in the same house', async () => {
  const page = await browser.context.newPage();
  await page.setViewportSize({ width: 360, height: 740 });
  for (const path of ['', 'joint/FB-S3', 'joint/TB-R1', 'joint/PH-F2', 'cards']) {
    await page.goto(new URL(path, shown.url).href);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect({ path, wide: Math.max(0, wide) }).toEqual({ path, wide: 0 });
  }
  const answer = await page.goto(new URL('joint/NOWHERE', shown.url).href);
  expect(answer?.status()).toBe(404);
});
