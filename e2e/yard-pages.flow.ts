import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { violations } from './axe.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { signIn as enter, passwordOf, toPage } from './desk.ts';
import { openWorkedYard } from './worked-yard.ts';
import { CREW, JOB, type Yard } from './yard.ts';

let yard: Yard;
let desk: OpenBrowser;
beforeAll(async () => {
  yard = await openWorkedYard();
  desk = await openBrowser({ viewport: { width: 1440, height: 900 }, bypassCSP: true });
}, 60_000);
afterAll(async () => {
  await desk?.close();
  await yard?.close();
});

async function sound(page: Page, name: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    expect(await violations(page), `${name}, ${colorScheme}`).toEqual([]);
  }
}

async function signIn(page: Page, name: string, password: string): Promise<void> {
  await page.goto(`${yard.server.url}/office/settings`);
  await enter(page, name, password);
}
const pagesOf = (page: Page) => page.getByRole('navigation', { name: 'Pages of the office' }).getByRole('link').allTextContents();

test('the yard’s pages: settings, a live board, a hired tool typed and read back, and a handover verified on the spot', async () => {
  const page = await desk.context.newPage();
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  await signIn(page, 'planner', passwordOf(yard.server.output()));

  // accounts for those who only look on
  await page.getByText('A further account').click();
  await page.getByLabel('Name to sign in with').fill('Marit Quay');
  await page.getByLabel(/^First password/).fill('pier four opens');
  await page.getByRole('checkbox', { name: /^client:/ }).check();
  await page.getByRole('checkbox', { name: 'Skerrow Sound' }).check();
  await page.getByRole('button', { name: 'Make the account' }).click();
  await page.getByText('The account Marit Quay is made.').waitFor();
  for (const role of ['inspector', 'store', 'crew'])
    await page.evaluate(
      ([as, job]) =>
        fetch('/api/v1/accounts', {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify({ name: `one ${as}`, password: 'pier four opens', roles: [as], books: [job] }),
        }).then(({ status }) => status),
      [role, JOB] as const,
    );
  await sound(page, 'settings');
  // a backup asks for the password again
  await page.getByLabel('Your password, once more').fill(passwordOf(yard.server.output()));
  const backup = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Write the backup' }).click();
  expect((await backup).suggestedFilename()).toMatch(/^clampwright-\d{4}-\d\d-\d\d\.backup$/);

  // without being a device of the job, the board is read from the server, and moves
  await toPage(page, 'Watch');
  await page.getByText('Live: moves as crews send').waitFor();
  await page.getByText(/of 432 pulls done/).waitFor();
  await sound(page, 'watch, as a reader');
  expect(await page.getByRole('button', { name: /^Settle it/ }).count()).toBe(0);

  await toPage(page, 'Start');
  await page.getByRole('button', { name: 'Take it onto this browser' }).click();
  await page.getByRole('button', { name: 'Work on it' }).waitFor();
  await toPage(page, 'Watch');
  await page.getByText('110 of 432 pulls done').waitFor();
  await page.getByText('Live: moves as crews send').waitFor();
  const { device } = yard.office;
  await device.append(JOB, 'bolt-tightened', { joint: yard.jointOf('FB-S3'), bolt: 1, step: 'snug', end: 'firm contact' }, { by: CREW.id });
  await yard.sync();
  await page.getByText('111 of 432 pulls done').waitFor();
  await sound(page, 'watch');
  // where events do not come through, it asks every few seconds and moves all the same
  await page.route('**/events', (route) => route.abort());
  await page.reload();
  await page.getByText('Asking every few seconds').waitFor();
  await device.append(JOB, 'bolt-tightened', { joint: yard.jointOf('FB-S3'), bolt: 2, step: 'snug', end: 'firm contact' }, { by: CREW.id });
  await yard.sync();
  await page.getByText('112 of 432 pulls done').waitFor();
  await page.unroute('**/events');
  await page.getByText('Live: moves as crews send').waitFor();

  // the tool store: a certificate is typed by one, and counts when another has read it back
  await toPage(page, 'Tool store');
  await page
    .getByText('54 days over')
    .or(page.getByText(/days over/))
    .first()
    .waitFor();
  for (const name of ['Ewa Lind', 'Tom Brae']) await page.getByRole('button', { name: `Take over ${name}` }).click();
  await sound(page, 'tool store');
  const days = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a calendar file' }).click();
  expect((await days).suggestedFilename()).toBe('due-dates.ics');
  await page.getByRole('link', { name: 'A hired tool, or a new certificate' }).click();
  const typed = {
    'Serial number on the tool': 'HT-77',
    'What it is called': 'hired battery wrench',
    'Repeatability, such as 4 %': '4 %',
    'Certificate number': 'LAB-2210',
    'Serial number on the certificate': 'HT-78',
    Laboratory: 'Holm calibration',
    'Reference standard of the laboratory': 'TT-500 no. 12',
    'Measured through (drive, adapter)': '3/4 inch drive',
    'Calibrated on': '2026-10-01',
    'Due on': '2099-10-01',
    'Uncertainty (k = 2), such as 1 %': '1 %',
  };
  for (const [label, text] of Object.entries(typed)) await page.getByLabel(label, { exact: true }).fill(text);
  await page.getByLabel('Choose the chart’s file').setInputFiles({
    name: 'chart.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('gear [N·m],1,2,3\n1,100,120,1l0\n2,200,230,260\n'),
  });
  // both slips are said where they are: the serial number beside its field, the figure at its cell
  await page.getByText(/1l0/).first().waitFor();
  await page.getByRole('grid', { name: 'Setting chart' }).locator('[aria-invalid=true]').waitFor();
  expect(await page.getByRole('button', { name: /^Typed: leave it/ }).isDisabled()).toBe(true);
  await page.getByLabel('Choose the chart’s file').setInputFiles({
    name: 'chart.csv',
    mimeType: 'text/csv',
    buffer: Buffer.from('gear [N·m],1,2,3\n1,100,120,140\n2,200,230,260\n'),
  });
  await page.getByText(/The certificate is for serial number HT-78/).waitFor();
  await page.getByLabel('Serial number on the certificate', { exact: true }).fill('HT-77');
  // what is no picture is said; a photo goes with the certificate, and stands beside the figures that are read back
  const picture = page.locator('input[type=file][capture]');
  await picture.setInputFiles({ name: 'scan.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no picture') });
  await page.getByText(/^This file is no picture/).waitFor();
  await picture.setInputFiles('packages/web/public/mark-192.png');
  await page.getByText('The picture is taken and goes with the certificate.').waitFor();
  await page.getByLabel('Typed by').selectOption({ label: 'Ewa Lind' });
  await page.getByRole('button', { name: 'This person' }).click();
  await page.getByLabel('PIN of Ewa Lind').fill(CREW.pin);
  await page.getByLabel('PIN of Ewa Lind').press('Enter');
  await page.getByText('Typed by: Ewa Lind').waitFor();
  await sound(page, 'a hired tool');
  await page.getByRole('button', { name: /^Typed: leave it/ }).click();
  await page.getByRole('heading', { name: 'Read back by another person' }).waitFor();
  await page.getByRole('img', { name: 'Picture of the certificate' }).first().waitFor();
  // whoever typed it cannot read it back
  const others = await page.getByLabel('Read back by').locator('option').allTextContents();
  expect(others).not.toContain('Ewa Lind');
  await page.getByLabel('Read back by').selectOption({ label: 'Tom Brae' });
  await page.getByRole('button', { name: 'This person' }).click();
  await page.getByLabel('PIN of Tom Brae').fill('1357');
  await page.getByLabel('PIN of Tom Brae').press('Enter');
  await page.getByText('Read back by: Tom Brae').waitFor();
  expect(await page.getByRole('button', { name: '6 rows still to be read back' }).isDisabled()).toBe(true);
  for (const box of await page.getByRole('checkbox').all()) await box.check();
  await sound(page, 'read back');
  await page.getByRole('button', { name: 'Certificate LAB-2210 is as on the paper' }).click();
  await page.getByText('read by Tom Brae').waitFor();
  await page.getByRole('link', { name: /^SK-B204/ }).click();
  await page.getByText(/It drifts by|No drift to be seen/).waitFor();
  await sound(page, 'a tool');

  // what is missing is said joint by joint; the file is verified before anybody gets it
  await toPage(page, 'Hand over');
  await page.getByText('0 of 6 joints are complete. The others lack:').waitFor();
  expect(await page.getByText('inspection: 0 of 1 bolts looked at').first().isVisible()).toBe(true);
  await page.getByRole('button', { name: 'Write the handover file' }).click();
  await page.getByText(/^Verified here, every byte/).waitFor();
  await sound(page, 'hand over');
  const file = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the handover file' }).click();
  expect((await file).suggestedFilename()).toBe(`${JOB}.handover`);
  for (const viewport of [
    { width: 820, height: 1180 },
    { width: 360, height: 740 },
  ]) {
    await page.setViewportSize(viewport);
    for (const path of ['settings', 'watch', 'tools', 'tools/SK-B204', 'tools/hire', 'handover']) {
      await page.goto(`${yard.server.url}/office/${path}`);
      await page.getByRole('heading', { level: 1 }).waitFor();
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      expect({ path, viewport, wide: Math.max(0, wide) }).toEqual({ path, viewport, wide: 0 });
    }
  }
  expect(errors).toEqual([]);
}, 180_000);

test('a client sees the board, what is handed over and their own settings, and nothing else', async () => {
  const client = await openBrowser({ viewport: { width: 1440, height: 900 }, bypassCSP: true });
  try {
    const page = await client.context.newPage();
    await signIn(page, 'Marit Quay', 'pier four opens');
    expect(await pagesOf(page)).toEqual(['Watch', 'Hand over', 'Settings']);
    for (const heading of ['Organisation', 'Accounts', 'Devices', 'Backup and export'])
      expect(await page.getByRole('heading', { name: heading, exact: true }).count(), heading).toBe(0);
    await page.goto(`${yard.server.url}/office/tools`);
    await page.getByText('This page is for another role than yours.').waitFor();
    await page.goto(`${yard.server.url}/office/watch`);
    await page.getByText(/of 432 pulls done/).waitFor();
    await toPage(page, 'Hand over');
    await page.getByRole('button', { name: 'Write the handover file' }).click();
    await page.getByText(/^Verified here, every byte/).waitFor();
    // and each other role its own pages
    for (const [role, last] of Object.entries({
      inspector: ['Tool store', 'Watch', 'Papers', 'Hand over', 'Settings'],
      store: ['Tool store', 'Watch', 'Papers', 'Settings'],
      crew: ['Watch', 'Settings'],
    })) {
      await page.goto(`${yard.server.url}/office/settings`);
      await page.getByRole('button', { name: 'Sign out' }).click();
      await signIn(page, `one ${role}`, 'pier four opens');
      expect((await pagesOf(page)).slice(-last.length), role).toEqual(last);
      expect((await pagesOf(page)).includes('People'), role).toBe(false);
      expect(await page.getByRole('heading', { name: 'Devices', exact: true }).count(), role).toBe(role === 'store' ? 1 : 0);
      for (const heading of ['Organisation', 'Accounts', 'Backup and export'])
        expect(await page.getByRole('heading', { name: heading, exact: true }).count(), `${role}: ${heading}`).toBe(0);
    }
  } finally {
    await client.close();
  }
}, 60_000);
