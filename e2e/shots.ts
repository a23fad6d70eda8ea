import type { Page } from 'playwright-core';

/** The page as it is seen, in light and in dark, among the pictures of the house. */
export async function shots(page: Page, name: string): Promise<void> {
  for (const colorScheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme });
    await page.evaluate(() => document.fonts.ready);
    await page.screenshot({ path: `docs/screens/${name}-${colorScheme}.png` });
  }
}
