import { writeFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { palettePng } from './palette-png.ts';

export const SCHEMES = ['light', 'dark'] as const;

/** The page as it is seen, in light and in dark, among the pictures of the house. */
export async function shots(page: Page, name: string): Promise<void> {
  for (const colorScheme of SCHEMES) {
    await page.emulateMedia({ colorScheme });
    await page.evaluate(() => document.fonts.ready);
    writeFileSync(`docs/screens/${name}-${colorScheme}.png`, palettePng(await page.screenshot()));
  }
}
