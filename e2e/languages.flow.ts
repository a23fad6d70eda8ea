import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Language } from '../packages/words/src/app/index.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { chooseDemo, takeJob } from './desk.ts';
import { englishFinder, textsOn } from './english-texts.ts';
import { openWorkedYard } from './worked-yard.ts';
import type { Yard } from './yard.ts';

let yard: Yard;
let desk: OpenBrowser;
let page: Page;
beforeAll(async () => {
  yard = await openWorkedYard();
  desk = await openBrowser({ viewport: { width: 1440, height: 900 } });
  page = await desk.context.newPage();
  await takeJob(page, yard.server);
  await page.getByLabel('Choose files').setInputFiles(FAULTY);
  await page.getByLabel('Tightened by').selectOption('en1090-torque');
  await page.getByRole('button', { name: 'Take this list' }).click();
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();
  await page.goto(`${yard.server.url}/office`);
  await chooseDemo(page);
}, 60_000);
afterAll(async () => {
  await desk?.close();
  await yard?.close();
});

/** A list with a fault of every kind that a list page tells of. */
const FAULTY = {
  name: 'splices.csv',
  mimeType: 'text/csv',
  buffer: Buffer.from(
    'joint;bolts;layout;size;grade;system;bolt length [mm];clamped thickness [mm];quux;lot\nS1;8;2x4;M20;10.9;HV;75;4O;;L-1\nS1;acht;2x4;M21;10.8;HV;75;40;;L-1\n',
  ),
};

/** What people of the yard wrote, in their own language. */
const TOLD = ['planner', 'Office', 'washer turned with the nut'];

/** Every page of planner and yard, with every part of it. */
const PAGES = [
  '',
  'plan',
  ...['FB-S1', 'PH-F1', 'PH-F2', 'TB-R1'].map((tag) => `plan/${tag}`),
  'simulate',
  'compare',
  'issue',
  'people',
  'papers',
  ...['', '/job', '/people', '/lots', '/tools', '/batteries', '/members', '/files'].map((part) => `define${part}`),
  'tools',
  'tools/SK-B204',
  'tools/hire',
  'watch',
  'handover',
  'settings',
];

/** Goes to a page as its links do, and waits until it says no more than before. */
async function goTo(path: string): Promise<void> {
  await page.evaluate((to) => history.pushState(null, '', to), `/office/${path}`);
  await page.getByRole('heading', { level: 1 }).waitFor();
  await settle();
}
async function settle(): Promise<void> {
  for (let [before, now] = ['', '-']; before !== now; [before, now] = [now, (await page.locator('body').textContent()) ?? ''])
    await page.waitForTimeout(100);
}

test.each(['de', 'pl', 'es', 'pt'] as const)(
  'no page of planner or yard says anything in English where it is read in %s',
  async (language: Language) => {
    const isEnglish = await englishFinder(language, TOLD);
    await page.evaluate((chosen) => localStorage.setItem('clampwright settings', JSON.stringify({ language: chosen })), language);
    await page.reload();
    await page.locator(`html[lang=${language}]`).waitFor();
    const found: Record<string, string[]> = {};
    for (const path of PAGES) {
      await goTo(path);
      const english = (await textsOn(page)).filter(isEnglish);
      if (english.length > 0) found[path] = english;
    }
    const see = async (name: string) => {
      await settle();
      const english = (await textsOn(page)).filter(isEnglish);
      if (english.length > 0) found[name] = english;
    };
    // what is said only after something was done
    await goTo('simulate');
    await page.locator('form button[type=submit]').click();
    await page.locator('figure svg').first().waitFor({ timeout: 60_000 });
    await see('simulate, played');
    await goTo('compare');
    await page.locator('main select').selectOption({ index: 1 });
    await page.locator('main table').first().waitFor();
    await see('compare, compared');
    await goTo('');
    await page.locator('input[type=file]').first().setInputFiles(FAULTY);
    await page.locator('main select').first().waitFor();
    await see('list');
    expect(found).toEqual({});
  },
  120_000,
);
