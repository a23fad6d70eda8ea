import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { toPage } from './desk.ts';
import { type Shown, showDemo } from './show-demo.ts';

let shown: Shown;
let browser: OpenBrowser;
beforeAll(async () => {
  shown = await showDemo();
  browser = await openBrowser({ viewport: { width: 1440, height: 900 } });
});
afterAll(async () => {
  await browser?.close();
  await shown?.stop();
});

test('a folder that is shown opens as a plan: every joint with its verdict, by keyboard to one and its setting, nothing from elsewhere', async () => {
  const page = await browser.context.newPage();
  const foreign: string[] = [];
  const errors: string[] = [];
  const home = new URL(shown.url).origin;
  page.on('request', (request) => {
    if (!request.url().startsWith(home) && !/^(data|blob):/.test(request.url())) foreign.push(request.url());
  });
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(shown.url);
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();
  await page.getByText('DEMO: nothing of this is real').waitFor();
  const table = page.getByRole('table', { name: 'Joints' });
  for (const tag of ['FB-S1', 'FB-S2', 'FB-S3', 'PH-F1', 'PH-F2', 'PH-F3', 'PH-F4', 'TB-R1', 'TB-R2'])
    expect(await table.getByRole('link', { name: tag, exact: true }).count(), tag).toBeGreaterThan(0);
  await table.getByRole('link', { name: 'FB-S1', exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.waitForURL('**/office/plan/FB-S1');
  await page.getByRole('heading', { name: 'What decides the preload' }).first().waitFor();
  const joint = ((await page.locator('main').textContent()) ?? '').replace(/\u00a0/g, ' ');
  expect(joint).toContain('gear 3, step 6');
  expect(joint).toContain('247 kN');
  // the rounds beside custom, with the forces after each
  await page.getByRole('heading', { name: 'How the bolts act on each other' }).waitFor();
  expect(foreign).toEqual([]);
  expect(errors).toEqual([]);
});

test('no page of a draft scrolls sideways on a phone', async () => {
  const [page] = browser.context.pages().slice(-1);
  await page!.setViewportSize({ width: 360, height: 740 });
  for (const name of ['Start', 'Define', 'Plan', 'Simulate', 'Compare', 'Issue']) {
    await toPage(page!, name);
    await page!.getByRole('heading', { level: 1 }).waitFor();
    const wide = await page!.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    expect({ name, wide: Math.max(0, wide) }).toEqual({ name, wide: 0 });
  }
});

test('pages of the yard say that no yard is here, and what starts one; nobody is asked for a password', async () => {
  const [page] = browser.context.pages().slice(-1);
  for (const name of ['Tool store', 'Watch', 'Hand over', 'Settings']) {
    await toPage(page!, name);
    await page!.getByRole('heading', { name: 'No yard at this address' }).waitFor();
    await page!.getByText('npx clampwright serve').waitFor();
    expect(await page!.getByLabel('Password').count()).toBe(0);
  }
});
