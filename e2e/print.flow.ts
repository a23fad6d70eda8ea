import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { chooseDemo, takeJob } from './desk.ts';
import { openWorkedYard } from './worked-yard.ts';
import type { Yard } from './yard.ts';

/** Kept where somebody wants to look at the pages. */
const kept = process.env.PRINTED;
const folder = kept ?? mkdtempSync(join(tmpdir(), 'clampwright-print-'));
let yard: Yard;
let desk: OpenBrowser;
let page: Page;
beforeAll(async () => {
  yard = await openWorkedYard();
  // what is printed out of a dark page on a large screen is black on white all the same
  desk = await openBrowser({ viewport: { width: 1440, height: 900 }, colorScheme: 'dark' });
  page = await desk.context.newPage();
  await takeJob(page, yard.server);
}, 60_000);
afterAll(async () => {
  await desk?.close();
  await yard?.close();
  if (kept === undefined) rmSync(folder, { recursive: true });
});

const A4 = { width: 595, height: 842 };
/** Points of the margin that no letter may stand in. */
const MARGIN = 20;

interface Printed {
  readonly pages: readonly string[];
  /** share of the first page that is not white */
  readonly ink: number;
}

/** Prints the page and reads the paper back: its pages as text, all within the sheet. */
async function printed(name: string): Promise<Printed> {
  const file = join(folder, `${name}.pdf`);
  writeFileSync(file, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
  const said = (command: string, ...args: string[]) => execFileSync(command, args).toString();
  const info = said('pdfinfo', file);
  expect(info, name).toMatch(/Page size:\s+59[45][.\d]* x 84[12][.\d]* pts \(A4\)/);
  for (const [, left, top, right, bottom, word] of said('pdftotext', '-bbox', file, '-').matchAll(
    /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*)<\/word>/g,
  ))
    expect(
      Number(left) >= MARGIN && Number(top) >= MARGIN && Number(right) <= A4.width - MARGIN && Number(bottom) <= A4.height - MARGIN,
      `${name}: “${word}” at ${left}, ${top}`,
    ).toBe(true);
  const pages = said('pdftotext', '-layout', file, '-').split('\f').slice(0, -1);
  const grey = execFileSync('pdftoppm', ['-gray', '-r', '20', '-f', '1', '-l', '1', file]);
  const pixels = grey.subarray(grey.length - Math.round((A4.width / 72) * 20) * Math.round((A4.height / 72) * 20));
  return { pages, ink: pixels.reduce((sum, one) => sum + (one < 128 ? 1 : 0), 0) / pixels.length };
}
const open = async (path: string, sign: string) => {
  await page.goto(`${yard.server.url}/office/${path}`);
  await page.getByText(sign).first().waitFor();
  // with a draft in hand, its rounds are waited for
  await page.getByText('Kept in this browser').waitFor({ timeout: 60_000 });
};

const HEAD = 'joint,rule set,layout,bolts,size,grade,system,bolt length [mm],clamped thickness [mm],lot,bolt 1,direction,seen from,tools';
const LONG = 120;

test('every page a planner prints fits on A4, black on white, whole, and without what only a screen can do', async () => {
  await chooseDemo(page);
  const PAGES: readonly (readonly [name: string, path: string, sign: string, says: readonly RegExp[], most: number])[] = [
    [
      'plan',
      'plan',
      'What to bring',
      [/Fix first/, /TB-R2/, /PH-F4/, /What to bring/, /must be read(.|\n)*must be read(.|\n)*must be read(.|\n)*must be read/],
      5,
    ],
    [
      'joint',
      'plan/PH-F1',
      'How the bolts act on each other',
      [/What decides the preload/, /Gear 3, step 11|gear 3, step 11/, /Cautions/],
      5,
    ],
    ['issue', 'issue', 'Look over', [/Look over/], 4],
    ['tool', 'tools/SK-B204', 'Daily checks', [/Daily checks/, /gear 2, step 9/], 6],
    ['board', 'watch', '110 of 432 pulls done', [/110 of 432 pulls done/, /FB-S1/], 4],
    ['handover', 'handover', 'joints are complete', [/0 of 6 joints are complete/, /Looking again/], 4],
  ];
  for (const [name, path, sign, says, most] of PAGES) {
    await open(path, sign);
    const { pages, ink } = await printed(name);
    const text = pages.join('\n');
    for (const words of says) expect(text, name).toMatch(words);
    for (const screen of [
      'The draft',
      'The job of the yard',
      'Simulate',
      'Show 3 more',
      'Go there',
      'Kept in this browser',
      'Write the handover file',
    ])
      expect(
        text.split('\n').map((line) => line.trim()),
        name,
      ).not.toContain(screen);
    expect(pages.length, `${name} takes ${pages.length} pages`).toBeLessThanOrEqual(most);
    expect(pages.at(-1)!.trim(), `${name} ends with an empty page`).not.toBe('');
    expect(ink, `${name} is black on white`).toBeLessThan(0.2);
  }
}, 90_000);

test('a long plan is printed whole: every joint, the head of its table on every page', async () => {
  const list = Array.from(
    { length: LONG },
    (_, at) => `J${at + 1},en1090-torque,2x4,8,M24,10.9,HV,95,${40 + (at % 30)},HV24-640,upper left,clockwise,outside,SK-B204`,
  );
  await page.goto(`${yard.server.url}/office`);
  await page.getByLabel('Choose files').setInputFiles([
    { name: 'job.yaml', mimeType: 'text/plain', buffer: Buffer.concat([readFileSync('demo/job.yaml'), Buffer.from('# long\n')]) },
    { name: 'joints.csv', mimeType: 'text/plain', buffer: Buffer.from([HEAD, ...list].join('\n')) },
    { name: 'tools.yaml', mimeType: 'text/plain', buffer: readFileSync('demo/tools.yaml') },
    { name: 'SK-B204.csv', mimeType: 'text/csv', buffer: readFileSync('demo/charts/SK-B204.csv') },
  ]);
  await page.getByText(`${LONG} joints shown`).waitFor();
  const { pages } = await printed('long-plan');
  const found = pages.map((text) => [...text.matchAll(/\bJ(\d+)\b/g)].map(([, number]) => Number(number)));
  expect(new Set(found.flat()).size).toBe(LONG);
  const withRows = pages.filter((text) => [...text.matchAll(/[▲●■] (attention|ready|stop)\s/g)].length > 2);
  expect(withRows.length).toBeGreaterThan(1);
  for (const text of withRows) expect(text).toMatch(/Joint\s+Verdict\s+Bolts/);
  // on the screen again only what is seen is drawn
  expect(await page.getByRole('table', { name: 'Joints' }).getByRole('row').count()).toBeLessThan(60);
}, 60_000);
