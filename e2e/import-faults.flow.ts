import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { readXlsx, writeXlsx } from 'hucre/xlsx';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { cellOf, toPage, toPart } from './desk.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-faults-'));
let server: RunningServer;
let browser: OpenBrowser;
let page: Page;
const errors: string[] = [];
beforeAll(async () => {
  server = await startServer({}, ['--data', join(folder, 'data')]);
  browser = await openBrowser({ viewport: { width: 1440, height: 900 } });
  page = await browser.context.newPage();
  page.on('pageerror', (error) => errors.push(error.message));
  await page.goto(`${server.url}/office`);
  await page.getByLabel('Choose files').setInputFiles(file('splices.csv', SOUND));
  await page.getByLabel('Tightened by').selectOption('en1090-torque');
  await page.getByRole('button', { name: 'Take this list' }).click();
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();
});
afterAll(async () => {
  await browser?.close();
  server?.kill('SIGTERM');
  await server?.ended;
  rmSync(folder, { recursive: true });
});

const HEAD = 'joint;bolts;layout;size;grade;system;bolt length [mm];clamped thickness [mm];lot';
const SOUND = `${HEAD}\nS1;8;2x4;M20;10.9;HV;75;40,5;L-1\n`;
const file = (name: string, content: string | Uint8Array) => ({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(content) });
/** Bytes of nothing, the same each time. */
const noise = Uint8Array.from({ length: 5000 }, (_, at) => (at * at * 31 + at * 7) % 256);
const book = () => unzipSync(new Uint8Array(readFileSync('packages/papers/fixtures/workbooks/list-de.xlsx')));
const SHEET = 'xl/worksheets/sheet1.xml';

/** Chooses another list in the place of the one in hand, and waits until it was looked at. */
async function choose(name: string, content: string | Uint8Array): Promise<void> {
  await toPage(page, 'Define');
  await page.getByText('Another list in its place').locator('input').setInputFiles(file(name, content));
  await page.getByRole('heading', { level: 1, name }).waitFor();
  await page
    .getByRole('link', { name: 'Leave it' })
    .or(page.getByRole('link', { name: 'Start' }).last())
    .first()
    .waitFor();
  await page.getByText(/understood;|No joint list was found/).waitFor();
}
const said = async () => (await page.locator('main :is(h1, p, small, [role=alert])').allTextContents()).join('\n');

/** The draft is what it was: its list, and nothing to take back. */
async function untouched(): Promise<void> {
  await toPage(page, 'Define');
  await toPart(page, 'Joints');
  expect(await page.getByRole('grid', { name: 'Joints' }).getAttribute('aria-rowcount')).toBe('2');
  expect([await cellOf(page, 1, 'joint'), await cellOf(page, 1, 'clamped thickness [mm]')]).toEqual(['S1', '40,5']);
  expect(await page.getByRole('button', { name: 'Take the last change back' }).isDisabled()).toBe(true);
}

const REFUSED: readonly (readonly [name: string, content: () => Uint8Array | string | Promise<Uint8Array>, said: RegExp])[] = [
  ['noise.csv', () => noise, /noise\.csv is not a text file.*Save it from the spreadsheet/s],
  ['noise.xlsx', () => noise, /noise\.xlsx is not a text file/],
  ['nothing.csv', () => '', /nothing\.csv is empty.*Enter at least the headings/s],
  ['no-sheet.xlsx', () => writeXlsx({ sheets: [{ name: 'Empty', rows: [] }] }), /no-sheet\.xlsx, sheet Empty.*is empty/s],
  [
    'cut.xlsx',
    () => new Uint8Array(readFileSync('packages/papers/fixtures/workbooks/list-de.xlsx')).subarray(0, 3000),
    /cannot be read: it is cut short/,
  ],
  [
    'old.xls',
    () => Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...noise]),
    /of the old kind \(XLS\).*Save it as XLSX/s,
  ],
  [
    'grows.xlsx',
    () => zipSync({ ...book(), [SHEET]: new Uint8Array(24_000_000) }, { level: 9 }),
    /is refused: its part .* would grow .* times/,
  ],
  [
    'entities.xlsx',
    () => {
      const sheet = new TextDecoder().decode(book()[SHEET]);
      const own = '<!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/hostname">]>';
      return zipSync({ ...book(), [SHEET]: strToU8(sheet.replace(/<worksheet/, `${own}<worksheet`)) });
    },
    /The workbook is refused: .*Ask where the file comes from/s,
  ],
  ['noise.ifc', () => noise, /cannot be read|is not/],
  ['no-bolts.ifc', () => NO_BOLTS, /No joint list was found in that file/],
];
const NO_BOLTS = `ISO-10303-21;
HEADER;
FILE_DESCRIPTION((''),'2;1');
FILE_NAME('no-bolts.ifc','2026-11-02T08:00:00',(''),(''),'','','');
FILE_SCHEMA(('IFC4'));
ENDSEC;
DATA;
#1=IFCAXIS2PLACEMENT3D(#3,$,$);
#2=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#1,$);
#3=IFCCARTESIANPOINT((0.,0.,0.));
#4=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
#5=IFCUNITASSIGNMENT((#4));
#6=IFCPROJECT('0clampwright0000000004',$,'Skerrow Sound',$,$,$,$,(#2),#5);
ENDSEC;
END-ISO-10303-21;
`;

test('what is no list is refused in words, says what to do, and leaves the draft as it was', async () => {
  for (const [name, content, words] of REFUSED) {
    await choose(name, await content());
    expect(await said(), name).toMatch(words);
    expect(await said(), name).toContain('The draft is as it was.');
    expect(await page.getByRole('button', { name: 'Take this list' }).count(), name).toBe(0);
    await untouched();
  }
  // a letter could be a list whose headings somebody explains: until then it is not taken
  await choose('letter.csv', 'Dear colleague;here it is\nplease find the list;\n');
  expect(await said()).toMatch(/No row of headings was recognised.*must name the columns/s);
  expect(await page.getByRole('button', { name: 'Take this list' }).isDisabled()).toBe(true);
  await untouched();
  expect(errors).toEqual([]);
}, 60_000);

test('faulty rows are said at their cell, and go back to whoever wrote them as a marked copy', async () => {
  const rows = [
    'S1;8;2x4;M20;10.9;HV;75;40,5;L-1',
    'S2;8;2x4;M21;10.9;HV;75;40;L-1', // read, and stopped by the plan: no such size
    'S3;8;2x4;M20;10.8;HV;75;40;L-1', // nor grade
    'S4;8;2x4;M20;10.9;HV;75;1.234;L-1', // a decimal, or thousands
    'S5;8;2x4;M20;10.9;HV;75;40 kN;L-1', // a force where a length is wanted
    'S6;9;2x4;M20;10.9;HV;75;40;L-1', // the layout has 8
    'S1;6;ring;M24;10.9;HV;75;40;L-1', // the first joint's name, described otherwise
  ];
  await choose('faulty.csv', `${HEAD}\n${rows.join('\n')}\n`);
  const text = await said();
  for (const words of [
    /faulty\.csv, row 5, column clamped thickness \[mm\] \(read “1\.234”\)[^\n]*\n[^\n]*may be read as a decimal/,
    /faulty\.csv, row 6, column clamped thickness \[mm\] \(read “40 kN”\)/,
    /faulty\.csv, row 7/,
    /Joint S1 is described twice/,
  ])
    expect(text).toMatch(words);
  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a copy with the faults marked' }).click();
  const copy = join(folder, 'marked.xlsx');
  expect((await saved).suggestedFilename()).toBe('faulty-faults.xlsx');
  await (await saved).saveAs(copy);
  const marked = (await readXlsx(new Uint8Array(readFileSync(copy)), { readStyles: true })).sheets.find(
    ({ name }) => name === 'faulty.csv',
  )!;
  expect(marked.rows[2]!.slice(0, 4)).toEqual(['S2', 8, '2x4', 'M21']);
  for (const at of ['4,7', '5,7', '6,2', '7,2']) expect(marked.cells!.get(at)?.comment?.text, at).toMatch(/\w/);
  await page.getByRole('link', { name: 'Leave it' }).click();
  await untouched();

  // what can be read and is no fastener stops its joint, and says where to mend it
  await choose('unknown.csv', [HEAD, ...rows.slice(0, 3)].join('\n'));
  await page.getByRole('button', { name: 'Take this list' }).click();
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();
  for (const [words, tag] of [
    [/No property class or grade 10\.8 is known/, 'S3'],
    [/M21/, 'S2'],
  ] as const) {
    const thing = page.getByRole('listitem').filter({ hasText: words }).filter({ hasText: 'stops the joint' });
    await thing.getByRole('link', { name: tag }).waitFor();
    await thing.getByRole('button', { name: 'Go there' }).click();
    await page.getByRole('grid', { name: 'Joints' }).locator('[data-active]').waitFor();
    await toPage(page, 'Plan');
  }
  await page.getByRole('button', { name: 'Take the last change back' }).click();
  await untouched();

  // units that contradict their column are said at the heading
  await choose('units.csv', SOUND.replace('clamped thickness [mm]', 'clamped thickness [kN]'));
  expect(await said()).toMatch(/The unit “kN” is not one of/);
  await untouched();
  // a workbook names sheet, row and letter as its spreadsheet shows them
  await choose('list-de.xlsx', new Uint8Array(readFileSync('packages/papers/fixtures/workbooks/list-de.xlsx')));
  expect(await said()).toMatch(/list-de\.xlsx, sheet Verbindungen, row 8, column H/);
  await untouched();
  expect(errors).toEqual([]);
}, 60_000);

test('a heading that may mean two things is asked for once, and remembered for every list with the same headings', async () => {
  const asked = SOUND.replace(';size;', ';Ø;');
  await choose('asked.csv', asked);
  expect(await said()).toMatch(/The heading “Ø” may mean: size, bolt circle, bearing diameter.*Say once what it means, at its heading/s);
  await page.getByLabel('“Ø” means').selectOption('size');
  await page.getByText('1 joint with 8 bolts understood').waitFor();
  expect(await said()).not.toContain('may mean');
  await page.getByRole('button', { name: 'Take this list' }).click();
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();
  await choose('again.csv', asked.replace('S1;', 'S9;'));
  expect(await said()).not.toContain('may mean');
  expect(await page.getByLabel('“Ø” means').inputValue()).toBe('size');
  await page.getByRole('link', { name: 'Leave it' }).click();
  // a new draft need not ask again, either
  await toPage(page, 'Start');
  await page.getByLabel('Choose files').setInputFiles(file('another.csv', asked.replace('S1;', 'S7;')));
  await page.getByText('How the columns were understood').waitFor();
  expect(await said()).not.toContain('may mean');
  expect(await page.getByLabel('“Ø” means').inputValue()).toBe('size');
  await page.getByRole('link', { name: 'Leave it' }).click();
  // one step brings back what there was before
  await toPage(page, 'Define');
  await page.getByRole('button', { name: 'Take the last change back' }).click();
  await untouched();
  expect(errors).toEqual([]);
}, 60_000);

test('a chart never takes the place of another tool’s; its faults, and a paper of another serial number, are said', async () => {
  await toPage(page, 'Define');
  await toPart(page, 'Tools and charts');
  const addTool = async (serial: string) => {
    await page.getByLabel('Serial number of a further tool').fill(serial);
    await page.getByRole('button', { name: 'Add the tool' }).click();
    await page.getByRole('heading', { name: serial, exact: true }).waitFor();
  };
  const drop = (content: string | Uint8Array) =>
    page.getByText('Choose the chart’s file').locator('input').setInputFiles(file('chart.csv', content));
  const chart = (faulty: string) => `gear [N·m],1,2,3\n1,100,120,${faulty}\n2,200,230,260\n`;
  await addTool('W-1');
  await drop(chart('140'));
  await page.getByRole('grid', { name: 'Setting chart of W-1' }).waitFor();
  await addTool('W-2');
  for (const [label, text] of [
    ['Number', 'C-2'],
    ['Calibrated on', '2026-01-10'],
    ['Due on', '2099-01-10'],
  ] as const) {
    await page.getByLabel(label, { exact: true }).fill(text);
    await page.getByLabel(label, { exact: true }).blur();
  }
  await drop(chart('1l0'));
  const grid = page.getByRole('grid', { name: 'Setting chart of W-2' });
  await grid.locator('[aria-invalid=true]').waitFor();
  expect(await said()).toMatch(/row 2, column 3 \(read “1l0”\)/);
  await drop(noise);
  await page
    .getByText(/is not a text file/)
    .first()
    .waitFor();
  await page.getByLabel('Serial number on it', { exact: true }).fill('W-7');
  await page.getByLabel('Serial number on it', { exact: true }).blur();
  await page
    .getByText(/The chart belongs to serial number W-7, the tool is W-2/)
    .first()
    .waitFor();
  // the first tool has its chart, cell for cell
  await page.getByRole('link', { name: /^W-1/ }).click();
  await page.getByRole('grid', { name: 'Setting chart of W-1' }).waitFor();
  expect(await cellOf(page, 1, '3')).toBe('140');
  expect(errors).toEqual([]);
}, 60_000);

test('an archive that grows without end, and a file that changes while it is read, are not taken', async () => {
  const forged = zipSync({ 'job.yaml': strToU8('title: t\n'), 'large.csv': new Uint8Array(100_000) });
  // its directory says that the second file unpacks to 2 GB
  const view = new DataView(forged.buffer);
  const entry = Buffer.from(forged).lastIndexOf(Buffer.from('PK\x01\x02'));
  view.setUint32(entry + 24, 2_000_000_000, true);
  await toPage(page, 'Start');
  await page.getByLabel('Choose files').setInputFiles(file('job.zip', forged));
  await page.getByText(/job\.zip unpacks to more than a job folder may hold\. Nothing was taken/).waitFor();
  await page.getByLabel('Choose files').setInputFiles(file('job.zip', noise));
  await page.getByText(/That is no joint list, model or job folder/).waitFor();

  const path = join(folder, 'late.csv');
  writeFileSync(path, SOUND);
  await toPage(page, 'Define');
  await toPart(page, 'Files');
  const input = page.getByLabel('Add files');
  await input.setInputFiles(path);
  await page.getByRole('link', { name: 'late.csv' }).waitFor();
  const kept = await page.getByRole('listitem').allTextContents();
  // the disk is slow, and somebody saves the list meanwhile
  await page.evaluate(() => {
    const slow = new Promise<void>((resolve) => {
      Object.assign(globalThis, { goOn: resolve });
    });
    File.prototype.arrayBuffer = async function (this: File) {
      await slow;
      return new Response(this).arrayBuffer();
    };
  });
  await input.setInputFiles(path);
  writeFileSync(path, `${SOUND}S2;8;2x4;M20;10.9;HV;75;40;L-1\n`);
  await page.evaluate(() => (globalThis as unknown as { goOn: () => void }).goOn());
  await page.getByText(/late\.csv could not be read: it was changed, moved or locked meanwhile/).waitFor();
  expect(await page.getByRole('listitem').allTextContents()).toEqual(kept);
  // a file of the same name is said to take the place of the one before
  await input.setInputFiles(path);
  await page.getByText('In place of earlier ones: late.csv').waitFor();
  expect(errors).toEqual([]);
}, 60_000);
