import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { passwordOf } from './desk.ts';
import { press, type } from './keys.ts';
import { openWorkedYard } from './worked-yard.ts';
import { JOB, type Yard } from './yard.ts';

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

test('the yard’s pages by keyboard alone: sign in, an account, the tool store, the board, and a handover', async () => {
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

  await press(page, 'Watch');
  await page.getByText('110 of 432 pulls done').waitFor();

  await press(page, 'Tool store');
  await page
    .getByText(/days over/)
    .first()
    .waitFor();
  const days = page.waitForEvent('download');
  await press(page, 'Save as a calendar file');
  expect((await days).suggestedFilename()).toBe('due-dates.ics');
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
