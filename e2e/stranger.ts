import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';
import { expect } from 'vitest';

const CHOOSE = 'Choose or drop a handover file';

/** Somebody without network and without us: opens the page that verifies, and finds the file sound. */
export async function verifyAlone(context: BrowserContext, server: string, file: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(`${server}/verify`);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await context.setOffline(true);
  await page.reload();
  await page.getByLabel(CHOOSE).setInputFiles(file);
  await page.getByRole('button', { name: 'Verify' }).click();
  await page.getByRole('heading', { name: 'Verified', exact: true }).waitFor();
  return page;
}

/** One byte of an entry of that kind is another: refused, and the line that holds it is named. */
export async function refusesAnotherByte(page: Page, file: string, kind: string): Promise<void> {
  const bytes = readFileSync(file);
  const at = bytes.indexOf(`"${kind}"`) + 3;
  bytes[at] = bytes[at]! ^ 1;
  await page.getByLabel(CHOOSE).setInputFiles({ name: 'changed.handover', mimeType: '', buffer: bytes });
  await page.getByRole('button', { name: 'Verify' }).click();
  await page.getByRole('heading', { name: 'Not verified' }).waitFor();
  const told = Number(/is byte (\d+)/.exec((await page.getByRole('alert').textContent()) ?? '')?.[1]);
  // the line that holds it begins there
  expect(told).toBe(bytes.lastIndexOf(10, at) + 1);
}
