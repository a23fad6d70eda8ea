import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';

/** Gzipped bytes of every script of ours that the page has fetched, those of its workers too. */
export async function scriptBytes(page: Page): Promise<number> {
  const scripts = await page.evaluate(() =>
    [
      ...new Set([...performance.getEntriesByType('resource').map(({ name }) => name), ...[...document.scripts].map(({ src }) => src)]),
    ].filter((one) => one.endsWith('.js') && one.includes('/assets/')),
  );
  const sizes = await page.evaluate(
    (all) => Promise.all(all.map(async (one) => [...new Uint8Array(await (await fetch(one)).arrayBuffer())])),
    scripts,
  );
  return sizes.reduce((sum, bytes) => sum + gzipSync(Uint8Array.from(bytes), { level: 9 }).length, 0);
}
