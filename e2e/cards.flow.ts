import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type OpenBrowser, openBrowser } from './browser.ts';

let browser: OpenBrowser;
let folder: string;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'clampwright-cards-'));
  cpSync('demo', folder, { recursive: true });
  browser = await openBrowser();
});
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

test('the cards file prints by itself, one A5 page or more for each joint, without any network', async () => {
  try {
    execFileSync('node', ['packages/cli/bin/clampwright.mjs', 'plan', folder], { stdio: 'ignore' });
  } catch (error) {
    // exit 1: some joints of the demo stop, as they should
    expect((error as { status: number }).status).toBe(1);
  }
  const page = await browser.context.newPage();
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  const file = pathToFileURL(join(folder, 'plan', 'cards.html')).href;
  await page.goto(file);
  await page.evaluate(() => document.fonts.ready);
  expect(asked.filter((url) => url !== file && !url.startsWith('data:'))).toEqual([]);
  const pdf = (await page.pdf({ preferCSSPageSize: true, printBackground: true })).toString('latin1');
  const pages = pdf.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
  expect(pages).toBeGreaterThanOrEqual(9);
  // A5 portrait: 148 mm × 210 mm = 419.5 × 595.3 points
  const box = /\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)/.exec(pdf)!;
  expect([Number(box[1]), Number(box[2])].map((points) => Math.round((points / 72) * 25.4))).toEqual([148, 210]);
});
