import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { violations } from './axe.ts';
import { SCHEMES } from './shots.ts';

/** Nothing for axe to object to, light and dark; `more`: its rules beside the usual ones. */
export async function accessible(page: Page, screen: string, more: readonly string[] = []): Promise<void> {
  for (const colorScheme of SCHEMES) {
    await page.emulateMedia({ colorScheme });
    expect.soft(await violations(page, more), `${screen}, ${colorScheme}`).toEqual([]);
  }
}

/** No sideways scrolling at twice the size. */
export async function fitsAtTwice(page: Page, screen: string): Promise<void> {
  const { width, height } = page.viewportSize()!;
  await page.setViewportSize({ width: width / 2, height: Math.round(height / 2) });
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect.soft(wide, `${screen} at 200 %`).toBeLessThanOrEqual(width / 2);
  await page.setViewportSize({ width, height });
}

const CONTROLS = 'main button, header a, main a, main select, main summary, main input, main textarea';

/** Everything that is pressed is 64 px high at least, what the screen is for 20 mm (at 96 px an inch), for a glove. */
export async function bigEnough(page: Page, screen: string): Promise<void> {
  const small = await page.evaluate((controls) => {
    const seen = [...document.querySelectorAll<HTMLElement>(controls)];
    return seen.flatMap((one) => {
      // a tick or a file is pressed at its words as well
      const target = one.closest('label') ?? one;
      if (!target.checkVisibility()) return [];
      const { height, width } = target.getBoundingClientRect();
      const main = one.matches('[data-kind="act"]:not([aria-pressed]), [class*="_hold_"]');
      return height < (main ? (20 * 96) / 25.4 : 64) || width < 64 ? [`${one.outerHTML.slice(0, 90)}: ${width} × ${height}`] : [];
    });
  }, CONTROLS);
  expect.soft(small, `${screen}: too small for a glove`).toEqual([]);
}

/** Everything that can be done is reached by the tabulator, one after the other, and is seen when it is. */
export async function reachedByKeys(page: Page, screen: string): Promise<void> {
  const left = () =>
    page.evaluate((controls) => {
      const open = [...document.querySelectorAll<HTMLElement>(controls)].filter(
        (one) =>
          one.checkVisibility() &&
          !one.matches(':disabled') &&
          one.dataset.reached === undefined &&
          // of those of which one is chosen, Tab stops at that one, and arrows go on
          !(one.matches('[type=radio]:not(:checked)') && document.querySelector(`[name="${(one as HTMLInputElement).name}"]:checked`)),
      );
      return open.map((one) => one.outerHTML.slice(0, 90));
    }, `${CONTROLS}, nav a, header button, header input`);
  const count = (await left()).length;
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  for (let press = 0; press < 4 * count + 40 && (await left()).length > 0; press += 1) {
    await page.keyboard.press('Tab');
    const inTable = await page.evaluate(() => {
      const at = document.activeElement as HTMLElement;
      const shown = getComputedStyle(at).outlineStyle !== 'none' || getComputedStyle(at.closest('label') ?? at).outlineStyle !== 'none';
      if (shown) at.dataset.reached = '';
      return at.getAttribute('role') === 'grid';
    });
    // a table keeps Tab for its cells until Escape is pressed
    if (inTable) await page.keyboard.press('Escape');
  }
  expect.soft(await left(), `${screen}: not reached by keys, or not seen when reached`).toEqual([]);
  await page.evaluate(() => {
    for (const one of document.querySelectorAll<HTMLElement>('[data-reached]')) delete one.dataset.reached;
    (document.activeElement as HTMLElement | null)?.blur();
    window.scrollTo(0, 0);
  });
}
