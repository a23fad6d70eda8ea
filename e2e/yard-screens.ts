import type { Page } from 'playwright-core';
import { openBrowser } from './browser.ts';
import { takeJob } from './desk.ts';
import { shots } from './shots.ts';
import { openWorkedYard } from './worked-yard.ts';

const SIZES = { laptop: { width: 1440, height: 900 }, tablet: { width: 820, height: 1180 } } as const;

/** Pictures of the yard's pages: tool store, board, hand over, settings. */
export async function yardScreens(): Promise<void> {
  const yard = await openWorkedYard();
  try {
    for (const [size, viewport] of Object.entries(SIZES)) {
      const { context, close } = await openBrowser({ viewport });
      const page = await context.newPage();
      const shoot = async (name: string, path: string, wait: (page: Page) => Promise<unknown>) => {
        await page.goto(`${yard.server.url}/office/${path}`);
        await wait(page);
        await shots(page, `office-${name}-${size}`);
      };
      await takeJob(page, yard.server);
      await shoot('watch', 'watch', (one) => one.getByText(/110 of 432 pulls done/).waitFor());
      await shoot('tools', 'tools', (one) => one.getByText(/days over/).waitFor());
      await shoot('tool', 'tools/SK-B204', (one) => one.getByText(/It drifts by|No drift to be seen/).waitFor());
      await shoot('hire', 'tools/hire', (one) => one.getByLabel('Certificate number').waitFor());
      await shoot('handover', 'handover', (one) => one.getByText(/joints are complete/).waitFor());
      await shoot('settings', 'settings', (one) => one.getByText('Signed in as planner').waitFor());
      await close();
    }
  } finally {
    await yard.close();
  }
}
