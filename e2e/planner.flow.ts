import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { violations } from './axe.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { cellOf, openJob, passwordOf, toPage, toPart } from './desk.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-planner-'));
let server: RunningServer;
let browser: OpenBrowser;
beforeAll(async () => {
  server = await startServer({}, ['--data', join(folder, 'data')]);
  browser = await openBrowser({
    viewport: { width: 1440, height: 900 },
    bypassCSP: true,
    permissions: ['clipboard-read', 'clipboard-write'],
  });
});
afterAll(async () => {
  await browser?.close();
  server?.kill('SIGTERM');
  await server?.ended;
  rmSync(folder, { recursive: true });
});

const LIST = `joint;bolts;layout;size;grade;system;bolt length [mm];clamped thickness [mm];lot;bolt 1;direction;seen from
S1;8;2x4;M20;10.9;HV;75;40;L-1;upper left;clockwise;outside
S2;8;2x4;M20;10.9;HV;75;4O;L-1;upper left;clockwise;outside
`;

/** Says what axe objects to, in light and in dark. */
async function sound(page: Page, name: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await violations(page), `${name}, ${colorScheme}`).toEqual([]);
  }
}

test('from a joint list to an issued plan: fix first, edit by keyboard, simulate, compare, issue', async () => {
  const page = await browser.context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(`${server.url}/office`);

  // a list without a rule set: asked, never guessed
  await page.getByLabel('Choose files').setInputFiles({ name: 'splices.csv', mimeType: 'text/csv', buffer: Buffer.from(LIST) });
  await page.getByText('1 joint with 8 bolts understood').waitFor();
  await sound(page, 'list');
  expect(await page.getByRole('button', { name: 'Take this list' }).isDisabled()).toBe(true);
  await page.getByLabel('Tightened by').selectOption('en1090-torque');
  await page.getByRole('button', { name: 'Take this list' }).click();
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();

  // the slip of a finger stands at its cell; by keyboard alone to it, and mended
  await page.getByText(/said while reading/).click();
  await page.getByRole('link', { name: /joints.csv, row 3/ }).click();
  const grid = page.getByRole('grid', { name: 'Joints' });
  await grid.focus();
  await page.keyboard.press('Control+Home');
  await page.keyboard.press('ArrowDown');
  for (let column = 0; column < 7; column += 1) await page.keyboard.press('ArrowRight');
  await grid.locator('[aria-invalid=true][data-active]').waitFor();
  await page.keyboard.type('40');
  await page.keyboard.press('Enter');
  expect(await cellOf(page, 2, 'clamped thickness [mm]')).toBe('40');
  await page
    .getByText('stop 2')
    .or(page.getByRole('link', { name: /stop\s*2/ }))
    .waitFor();
  await page.keyboard.press('Control+z');
  expect(await cellOf(page, 2, 'clamped thickness [mm]')).toBe('4O');
  await page.keyboard.press('Control+Shift+z');
  expect(await cellOf(page, 2, 'clamped thickness [mm]')).toBe('40');

  // rows out of a spreadsheet, and one value into many cells
  await page.evaluate(() =>
    navigator.clipboard.writeText('S3\t8\t2x4\tM20\t10.9\tHV\t75\t40\tL-1\nS4\t8\t2x4\tM20\t10.9\tHV\t75\t40\tL-1'),
  );
  await page.getByRole('button', { name: 'Add a row' }).click();
  await grid.focus();
  await page.keyboard.press('Control+v');
  expect(await cellOf(page, 4, 'joint')).toBe('S4');
  await page.keyboard.press('Control+End');
  await page.keyboard.press('Shift+ArrowUp');
  await page.keyboard.press('F2');
  await page.keyboard.type('outside');
  await page.keyboard.press('Control+Enter');
  expect([await cellOf(page, 3, 'seen from'), await cellOf(page, 4, 'seen from')]).toEqual(['outside', 'outside']);
  // what is copied comes back
  await page.keyboard.press('Control+a');
  await page.keyboard.press('Control+c');
  expect((await page.evaluate(() => navigator.clipboard.readText())).split('\n')).toHaveLength(4);
  await sound(page, 'joints');
  // the keyboard is not caught in the table
  await page.keyboard.press('Escape');
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Add a row');

  // the lot, and a tool with a chart that is typed
  await toPart(page, 'Lots');
  await page.getByRole('button', { name: 'Add a row' }).click();
  const lots = page.getByRole('grid', { name: 'Lots' });
  for (const text of ['L-1', 'K2', '0.13', '4 %', 'yes', 'test 7']) {
    await lots.focus();
    await page.keyboard.type(text);
    await page.keyboard.press('Tab');
  }
  await sound(page, 'lots');
  await toPart(page, 'Tools and charts');
  await page.getByLabel('Serial number of a further tool').fill('W-1');
  await page.getByRole('button', { name: 'Add the tool' }).click();
  const fill = async (label: string, text: string) => {
    await page.getByLabel(label, { exact: true }).fill(text);
    await page.getByLabel(label, { exact: true }).blur();
  };
  await fill('Number', 'C-1');
  await fill('Calibrated on', '2026-01-10');
  await fill('Due on', '2099-01-10');
  await page.getByText('Type the chart').click();
  await page.getByLabel('Gears').fill('1');
  await page.getByLabel('Steps', { exact: true }).fill('6');
  await page.getByRole('button', { name: 'Begin the chart' }).click();
  const chart = page.getByRole('grid', { name: 'Setting chart of W-1' });
  await chart.focus();
  await page.keyboard.press('ArrowRight');
  for (const torque of ['340', '368', '420', '470', '491', '520']) {
    await page.keyboard.type(torque);
    await page.keyboard.press('Tab');
  }
  await sound(page, 'tools');

  // verdicts, and one joint
  await toPage(page, 'Plan');
  await page.getByRole('button', { name: 'No hazardous area in this job' }).click();
  await page
    .getByRole('link', { name: /attention\s*4|ready\s*4/ })
    .first()
    .waitFor();
  await page.getByLabel('Find').fill('S2');
  await page.getByText('1 joint shown').waitFor();
  await sound(page, 'plan');
  await page.getByRole('table', { name: 'Joints' }).getByRole('link', { name: 'S2' }).click();
  await page.getByRole('heading', { name: 'What decides the preload' }).waitFor();
  await sound(page, 'joint');

  await toPage(page, 'Simulate');
  await page.getByRole('button', { name: 'Play' }).click();
  await page.getByText('from seed 1').waitFor({ timeout: 60_000 });
  await sound(page, 'simulation');

  await openJob(page, passwordOf(server.output()), 'Footbridge', 'Ines Dahl');
  await toPage(page, 'Issue');
  await page.getByLabel('Number of this issue').waitFor();
  await page.getByRole('button', { name: 'Issue the plan' }).click();
  await page.getByText(/^Plan P-1 is issued/).waitFor();
  await sound(page, 'issue');

  // a change, and what it makes otherwise since
  await toPage(page, 'Define');
  await page.getByRole('grid', { name: 'Joints' }).focus();
  await page.keyboard.press('Control+Home');
  for (let column = 0; column < 8; column += 1) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Delete');
  await toPage(page, 'Issue');
  await page.getByRole('heading', { name: 'Since plan P-1' }).waitFor();
  await page.getByRole('link', { name: 'S1' }).waitFor();
  await toPage(page, 'Compare');
  await page.getByLabel('Compare the plan in hand with').selectOption({ label: 'issued plan P-1' });
  await page.getByRole('heading', { name: '1 joint is different' }).waitFor();
  await sound(page, 'compare');

  // another planner goes on from the files of the issued plan
  await toPage(page, 'Issue');
  await page.getByRole('button', { name: 'Go on from the files of plan P-1' }).click();
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();
  await toPage(page, 'Define');
  expect(await cellOf(page, 1, 'lot')).toBe('L-1');
  expect(errors).toEqual([]);
}, 240_000);

test('the demo is marked on every page, mends itself by a way that was tried, and is never issued', async () => {
  const page = await browser.context.newPage();
  await page.goto(`${server.url}/office`);
  const here = page.getByRole('button', { name: 'Go on here' });
  await here
    .or(page.getByRole('button', { name: 'Open the demo' }))
    .first()
    .waitFor();
  if (await here.isVisible()) await here.click();
  await page.getByRole('button', { name: 'Open the demo' }).click();
  await page.getByRole('button', { name: /^Plan with SK-H031/ }).click();
  await page.getByRole('button', { name: /^Plan with SK-H031/ }).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Take the last change back' }).click();
  await page.getByRole('button', { name: /^Plan with SK-H031/ }).waitFor();
  for (const name of ['Define', 'Plan', 'Simulate', 'Compare', 'Issue', 'Start']) {
    await toPage(page, name);
    await page.getByText('DEMO: nothing of this is real').first().waitFor();
    await sound(page, `demo ${name}`);
  }
  for (const part of ['Job', 'People', 'Batteries', 'What bolts clamp', 'Files']) {
    await toPage(page, 'Define');
    await toPart(page, part);
    await sound(page, part);
  }
  await toPage(page, 'Issue');
  await page.getByText('The demo is not issued').waitFor();
  expect(await page.getByRole('button', { name: 'Issue the plan' }).count()).toBe(0);
}, 120_000);
