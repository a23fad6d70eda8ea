import type { Page } from 'playwright-core';

type Told = typeof globalThis & { slowest: { readonly name: string; readonly duration: number } | undefined; interactions: number };

/** Plays so many runs, long enough to press keys and click meanwhile. */
const RUNS = '20000';
const ROUNDS = 6;

/** The slowest answer to a key or a click while the simulation plays, ms from the press to the picture that shows it, as browsers measure it. */
export async function slowestInteraction(page: Page, home: string): Promise<{ readonly duration: number; readonly of: number }> {
  await page.goto(new URL('/office/simulate', home).href);
  await page.getByText('Kept in this browser').waitFor({ timeout: 60_000 });
  await page.getByLabel('Runs').fill(RUNS);
  await page.getByRole('button', { name: 'Play' }).click();
  await page.getByRole('progressbar').waitFor();
  await page.evaluate(() => {
    const told = globalThis as Told;
    [told.slowest, told.interactions] = [undefined, 0];
    new PerformanceObserver((entries) => {
      for (const one of entries.getEntries() as (PerformanceEventTiming & { readonly interactionId: number })[]) {
        if (one.interactionId === 0) continue;
        told.interactions += 1;
        if (one.duration > (told.slowest?.duration ?? 0)) told.slowest = { name: one.name, duration: one.duration };
      }
    }).observe({ type: 'event', durationThreshold: 16 } as PerformanceObserverInit);
  });
  const mistakes = page.locator('details summary').first();
  for (let round = 0; round < ROUNDS; round += 1) {
    await mistakes.click();
    await page.getByLabel('Seed').click();
    await page.keyboard.press('End');
    await page.keyboard.type('12');
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Backspace');
    await page.keyboard.press('Tab');
    await page.waitForTimeout(150);
  }
  if (!(await page.getByRole('progressbar').isVisible())) throw new Error('the simulation was over before the last key: play more runs');
  await page.getByRole('button', { name: 'Stop' }).click();
  await page.waitForTimeout(500);
  return page.evaluate(() => {
    const { slowest, interactions } = globalThis as Told;
    return { duration: slowest?.duration ?? 0, of: interactions };
  });
}
