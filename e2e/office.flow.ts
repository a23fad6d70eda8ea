import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join as path } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { chooseFolder, openJob, passwordOf, toPage } from './desk.ts';

const folder = mkdtempSync(path(tmpdir(), 'clampwright-office-'));
let server: RunningServer;
let office: OpenBrowser;
let phone: OpenBrowser;
beforeAll(async () => {
  server = await startServer({}, ['--data', path(folder, 'data')]);
  office = await openBrowser({ viewport: { width: 1440, height: 900 } });
  phone = await openBrowser({ viewport: { width: 360, height: 740 } });
});
afterAll(async () => {
  await office?.close();
  await phone?.close();
  server?.kill('SIGTERM');
  await server?.ended;
  rmSync(folder, { recursive: true });
});

test('a planner opens a job, issues the demo’s plan, and a phone joins and sees its joints; a stop reaches it', async () => {
  const desk = await office.context.newPage();
  const errors: string[] = [];
  desk.on('pageerror', (error) => errors.push(error.message));
  const to = (name: string) => toPage(desk, name);
  await desk.goto(server.url);
  await desk.getByRole('link', { name: 'Office' }).click();
  await openJob(desk, passwordOf(server.output()), 'Spring outage', 'Ines Dahl');

  await to('Start');
  await chooseFolder(desk.getByLabel('Choose files'));
  await desk.getByRole('heading', { name: 'Skerrow Sound, spring outage' }).waitFor();
  await to('Issue');
  await desk.getByLabel('Number of this issue').waitFor();
  for (const name of await desk.getByLabel('Approved by').all()) await name.fill('Ines Dahl');
  await desk.getByLabel('Number of this issue').fill('P-1');
  await desk.getByRole('button', { name: 'Issue the plan' }).click();
  await desk.getByText(/^Plan P-1 is issued/).waitFor();

  await to('Papers');
  // the report alone, from the server, in the languages chosen
  await desk.getByLabel('Language of the papers').selectOption('de');
  await desk.getByLabel('Beneath it').selectOption('pl');
  const report = desk.waitForEvent('download');
  await desk.getByRole('button', { name: 'Report (PDF)' }).click();
  await (await report).saveAs(path(folder, 'report.pdf'));
  const reported = execFileSync('pdftotext', [path(folder, 'report.pdf'), '-'])
    .toString()
    .replace(/\s+/g, ' ');
  for (const words of ['Schraubbericht', 'Raport skręcania', 'Plan P-1 ausgegeben']) expect(reported).toContain(words);
  await desk.getByLabel('Language of the papers').selectOption('en');
  await desk.getByLabel('Beneath it').selectOption('');

  // papers are made by the browser itself, without network
  await desk.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await desk.getByRole('button', { name: 'Bolting cards A6' }).waitFor();
  await office.context.setOffline(true);
  for (const [button, file] of [
    ['Bolting cards A6', 'cards-A6.pdf'],
    ['Tags on sheets', 'tags-sheet.pdf'],
    ['Plan for review', 'plan.pdf'],
    ['Workbook (XLSX)', 'clampwright.xlsx'],
  ] as const) {
    const coming = desk.waitForEvent('download');
    await desk.getByRole('button', { name: button }).click();
    const saved = path(folder, file);
    await (await coming).saveAs(saved);
    const text = file.endsWith('.pdf') ? execFileSync('pdftotext', [saved, '-']).toString() : readFileSync(saved).toString('latin1', 0, 2);
    expect(text, file).toContain(file.endsWith('.pdf') ? 'FB-S1' : 'PK');
  }
  // in two languages, still without network
  await desk.getByLabel('Language of the papers').selectOption('de');
  await desk.getByLabel('Beneath it').selectOption('pl');
  const spoken = desk.waitForEvent('download');
  await desk.getByRole('button', { name: 'Bolting cards A5' }).click();
  await (await spoken).saveAs(path(folder, 'cards-A5.pdf'));
  const inBoth = execFileSync('pdftotext', [path(folder, 'cards-A5.pdf'), '-']).toString();
  for (const words of ['Warnhinweise', 'Ostrzeżenia', 'Unterschrift Bediener', 'Podpis operatora']) expect(inBoth).toContain(words);
  // a model is read here too, without network: what was understood comes first
  await to('Start');
  await desk.getByLabel('Choose files').setInputFiles('packages/papers/fixtures/ifc/splice-ifc4-mm.ifc');
  await desk.getByText(/joints? with \d+ bolts understood/).waitFor();
  await office.context.setOffline(false);

  await to('Settings');
  await desk.getByLabel('What to call it').fill('phone 1');
  await desk.getByRole('button', { name: 'A code for a new device' }).click();
  const code = /Code (\S+),/.exec((await desk.getByText(/^Code /).textContent()) ?? '')![1]!;
  const page = await phone.context.newPage();
  await page.goto(`${server.url}/#join=${code}`);
  await page.getByRole('button', { name: 'Join' }).click();
  await page.getByText('FB-S1').first().waitFor();

  // the stop is read over the radio to a phone that has no network
  await phone.context.setOffline(true);
  await to('Issue');
  await desk.getByLabel('Why it is withdrawn').fill('wrong gasket');
  await desk.getByRole('button', { name: 'Withdraw plan P-1' }).click();
  const stop = /radio: (\d{4})/.exec((await desk.getByText(/Stop code/).textContent()) ?? '')![1]!;
  await page.getByText('A stop was called over the radio').click();
  await page.getByLabel('Code').fill(stop);
  await page.getByRole('button', { name: /^STOP/ }).click();
  await page.getByText(/STOP. Plan P-1 is withdrawn/).waitFor();
  expect(errors).toEqual([]);
}, 120_000);
