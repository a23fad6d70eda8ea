import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { passwordOf } from './desk.ts';
import { choose, pickFiles, press, tabTo, type } from './keys.ts';
import { openWorkedYard } from './worked-yard.ts';
import { CREW, JOB, MATE, type Yard } from './yard.ts';

let yard: Yard;
let desk: OpenBrowser;
beforeAll(async () => {
  yard = await openWorkedYard();
  desk = await openBrowser({ viewport: { width: 1440, height: 900 } });
}, 60_000);
afterAll(async () => {
  await desk?.close();
  await yard?.close();
});

const HIRED = [
  ['Serial number on the tool', 'HT-77'],
  ['What it is called', 'hired battery wrench'],
  ['Repeatability, such as 4 %', '4 %'],
  ['Certificate number', 'LAB-2210'],
  ['Serial number on the certificate', 'HT-77'],
  ['Laboratory', 'Holm calibration'],
  ['Reference standard of the laboratory', 'TT-500 no. 12'],
  ['Measured through (drive, adapter)', '3/4 inch drive'],
  ['Calibrated on', '10012026'],
  ['Due on', '10012099'],
  ['Uncertainty (k = 2), such as 1 %', '1 %'],
] as const;
const CHART = 'gear [N·m],1,2,3\n1,100,120,140\n2,200,230,260\n';

/** A person of the yard names themselves, with their PIN. */
async function nameBy(page: Page, label: string, { name, pin }: { readonly name: string; readonly pin: string }): Promise<void> {
  await choose(page, label, name);
  await press(page, 'This person');
  await type(page, `PIN of ${name}`, pin);
  await page.keyboard.press('Enter');
  await page.getByText(`${label}: ${name}`).waitFor();
}

test('the yard’s pages by keyboard alone: sign in, an account, the board and what it leaves to settle, a hired tool, and a handover', async () => {
  const page = await desk.context.newPage();
  await page.goto(`${yard.server.url}/office/settings`);
  await page.getByLabel('Password', { exact: true }).waitFor();
  await type(page, 'Name', 'planner');
  await type(page, 'Password', passwordOf(yard.server.output()));
  await page.keyboard.press('Enter');
  await page.getByText('Signed in as planner').waitFor();

  await press(page, 'A further account');
  await type(page, 'Name to sign in with', 'Marit Quay');
  await type(page, /^First password/, 'pier four opens');
  await press(page, /^client/, 'Space');
  await press(page, 'Skerrow Sound', 'Space');
  await press(page, 'Make the account');
  await page.getByText('The account Marit Quay is made.').waitFor();

  await press(page, 'Start');
  await page.getByRole('button', { name: 'Take it onto this browser' }).waitFor();
  await press(page, 'Take it onto this browser');
  await page.getByRole('button', { name: 'Work on it' }).waitFor();

  await press(page, 'People');
  await type(page, 'Name of the person', 'tom brae');
  await page.getByText('Tom Brae takes part already').waitFor();
  await press(page, 'I am Ines Dahl', 'Space');
  await page.getByRole('button', { name: 'I am Ines Dahl', pressed: true }).waitFor();

  await press(page, 'Watch');
  await page.getByText('110 of 432 pulls done').waitFor();
  const settle = page.getByRole('button', { name: 'Settle it as Ines Dahl' });
  const open = await settle.count();
  await choose(page, 'What becomes of it', 'rework');
  await type(page, 'By what authority', 'engineer of record');
  await type(page, 'Reason', 'the nut is taken off, a fresh washer laid');
  await press(page, 'Settle it as Ines Dahl');
  await expect.poll(() => settle.count()).toBe(open - 1);

  await press(page, 'Tool store');
  await page
    .getByText(/days over/)
    .first()
    .waitFor();
  const days = page.waitForEvent('download');
  await press(page, 'Save as a calendar file');
  expect((await days).suggestedFilename()).toBe('due-dates.ics');
  for (const name of ['Ewa Lind', 'Tom Brae']) await press(page, `Take over ${name}`);
  await press(page, 'A hired tool, or a new certificate');
  for (const [label, text] of HIRED) await type(page, label, text);
  await pickFiles(page, 'Photo of the certificate', 'packages/web/public/mark-192.png');
  await page.getByText('The picture is taken and goes with the certificate.').waitFor();
  await pickFiles(page, 'Choose the chart’s file', { name: 'chart.csv', mimeType: 'text/csv', buffer: Buffer.from(CHART) });
  await page.getByRole('grid', { name: 'Setting chart' }).waitFor();
  await nameBy(page, 'Typed by', CREW);
  await press(page, /^Typed: leave it/);
  await page.getByRole('heading', { name: 'Read back by another person' }).waitFor();
  for (let rows = await page.getByRole('checkbox').count(); rows > 0; rows -= 1) {
    await tabTo(page, /./, 'checkbox');
    await page.keyboard.press('Space');
  }
  await nameBy(page, 'Read back by', MATE);
  await press(page, 'Certificate LAB-2210 is as on the paper');
  await page.getByText('read by Tom Brae').waitFor();
  await press(page, /^SK-B204/);
  await page.getByRole('heading', { name: 'Daily checks' }).waitFor();

  await press(page, 'Hand over');
  await page.getByText('0 of 6 joints are complete. The others lack:').waitFor();
  await press(page, 'Write the handover file');
  await page.getByText(/^Verified here, every byte/).waitFor();
  const file = page.waitForEvent('download');
  await press(page, 'Save the handover file');
  expect((await file).suggestedFilename()).toBe(`${JOB}.handover`);
}, 120_000);
