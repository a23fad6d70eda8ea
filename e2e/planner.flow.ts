import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { violations } from './axe.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { cellOf, passwordOf, toPage, toPart } from './desk.ts';
import { choose, pickFiles, press, tabTo, type } from './keys.ts';

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

test('from a joint list to an issued plan by keyboard alone: fix first, edit, lots, a tool, simulate, compare, issue', async () => {
  const page = await browser.context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(`${server.url}/office`);

  // a list without a rule set: asked, never guessed
  await page.getByLabel('Choose files').waitFor();
  await pickFiles(page, 'Choose files', { name: 'splices.csv', mimeType: 'text/csv', buffer: Buffer.from(LIST) });
  await page.getByText('1 joint with 8 bolts understood').waitFor();
  await sound(page, 'list');
  expect(await page.getByRole('button', { name: 'Take this list' }).isDisabled()).toBe(true);
  await choose(page, /^Tightened by/, /EN 1090-2.*torque/);
  await press(page, 'Take this list');
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();

  // the slip of a finger stands at its cell, which the way there has in hand; mended
  await press(page, /said while reading/);
  await press(page, /joints.csv, row 3/);
  const grid = page.getByRole('grid', { name: 'Joints' });
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
  await page.keyboard.press('Escape');
  await press(page, 'Add a row');
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
  await press(page, 'Lots');
  await press(page, 'Add a row');
  for (const text of ['L-1', 'K2', '0.13', '4 %', 'yes', 'test 7']) {
    await page.keyboard.type(text);
    await page.keyboard.press('Tab');
  }
  await sound(page, 'lots');
  await press(page, 'Tools and charts');
  await type(page, 'Serial number of a further tool', 'W-1');
  await page.keyboard.press('Enter');
  await type(page, 'Number', 'C-1');
  await type(page, 'Calibrated on', '01102026');
  await type(page, 'Due on', '01102099');
  await press(page, 'Type the chart');
  await type(page, 'Gears', '1');
  await type(page, 'Steps', '6');
  await press(page, 'Begin the chart');
  await tabTo(page, 'Setting chart of W-1', 'grid');
  await page.keyboard.press('ArrowRight');
  for (const torque of ['340', '368', '420', '470', '491', '520']) {
    await page.keyboard.type(torque);
    await page.keyboard.press('Tab');
  }
  await sound(page, 'tools');

  // verdicts, and one joint
  await press(page, 'Plan');
  await press(page, 'No hazardous area in this job');
  await page
    .getByRole('link', { name: /attention\s*4|ready\s*4/ })
    .first()
    .waitFor();
  await type(page, 'Find', 'S2');
  await page.getByText('1 joint shown').waitFor();
  await sound(page, 'plan');
  await tabTo(page, 'Joints', 'table');
  await press(page, 'S2');
  await page.getByRole('heading', { name: 'What decides the preload' }).waitFor();
  await sound(page, 'joint');

  await press(page, 'Simulate');
  await press(page, 'Play');
  await page.getByText('from seed 1').waitFor({ timeout: 60_000 });
  await sound(page, 'simulation');

  // a job of the yard, and the planner who sits here
  await press(page, 'Settings');
  await type(page, 'Name', 'planner');
  await type(page, 'Password', passwordOf(server.output()));
  await page.keyboard.press('Enter');
  await page.getByText('Signed in as planner').waitFor();
  await press(page, 'Start');
  await type(page, 'Name of a new job', 'Footbridge');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Take it onto this browser' }).waitFor();
  await press(page, 'Take it onto this browser');
  await page.getByRole('button', { name: 'Work on it' }).waitFor();
  await press(page, 'People');
  await type(page, 'Name of the person', 'Ines Dahl');
  await choose(page, 'Role', 'planner');
  await press(page, 'Enrol the person');
  await page.getByRole('button', { name: 'I am Ines Dahl' }).waitFor();
  await press(page, 'Issue');
  await page.getByLabel('Number of this issue').waitFor();
  await press(page, 'Issue the plan');
  await page.getByText(/^Plan P-1 is issued/).waitFor();
  await sound(page, 'issue');

  // a change, and what it makes otherwise since
  await press(page, 'Define');
  await tabTo(page, 'Joints', 'grid');
  await page.keyboard.press('Control+Home');
  for (let column = 0; column < 8; column += 1) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Delete');
  await press(page, 'Issue');
  await page.getByRole('heading', { name: 'Since plan P-1' }).waitFor();
  await page.getByRole('link', { name: 'S1' }).waitFor();
  await press(page, 'Compare');
  await choose(page, 'Compare the plan in hand with', 'issued plan P-1');
  await page.getByRole('heading', { name: '1 joint is different' }).waitFor();
  await sound(page, 'compare');

  // another planner goes on from the files of the issued plan
  await press(page, 'Issue');
  await page.getByRole('button', { name: 'Go on from the files of plan P-1' }).waitFor();
  await press(page, 'Go on from the files of plan P-1');
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();
  await press(page, 'Define');
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
