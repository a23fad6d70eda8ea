import { openBrowser } from './browser.ts';
import { showDemo } from './show-demo.ts';

const SIZES = { laptop: { width: 1440, height: 900 }, tablet: { width: 820, height: 1180 }, phone: { width: 360, height: 740 } } as const;
/** What is seen of each page: its address, and what is waited for. */
const PAGES = {
  plan: ['/office/plan', 'Fix first'],
  define: ['/office/define', 'Define'],
  tools: ['/office/define/tools', 'Setting chart'],
  joint: ['/office/plan/FB-S1', 'What decides the preload'],
  ring: ['/office/plan/TB-R1', 'What decides the preload'],
  flange: ['/office/plan/PH-F1', 'How the bolts act on each other'],
  issue: ['/office/issue', 'Look over'],
} as const;

/** Pictures of the planner's pages with the demo, light and dark. */
export async function plannerScreens(): Promise<void> {
  const shown = await showDemo();
  try {
    for (const [size, viewport] of Object.entries(SIZES)) {
      const { context, close } = await openBrowser({ viewport });
      const page = await context.newPage();
      const shoot = async (name: string) => {
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.emulateMedia({ colorScheme });
          await page.evaluate(() => document.fonts.ready);
          await page.screenshot({ path: `docs/screens/planner-${name}-${size}-${colorScheme}.png` });
        }
      };
      await page.goto(shown.url);
      await page.getByRole('heading', { name: 'Fix first' }).waitFor();
      for (const [name, [path, heading]] of Object.entries(PAGES)) {
        await page.goto(new URL(path, shown.url).href);
        await page.getByRole('heading', { name: heading }).first().waitFor();
        await page.getByText('Kept in this browser').waitFor({ timeout: 60_000 });
        if (name === 'flange') await page.getByRole('heading', { name: heading }).first().scrollIntoViewIfNeeded();
        await shoot(name);
      }
      await page.goto(new URL('/office/simulate', shown.url).href);
      await page.getByRole('button', { name: 'Play' }).click();
      await page.getByText('from seed 1').waitFor({ timeout: 60_000 });
      await shoot('simulate');
      await page.goto(new URL('/office', shown.url).href);
      await page.getByRole('button', { name: 'Open the demo' }).waitFor();
      await shoot('start');
      await close();
    }
  } finally {
    await shown.stop();
  }
}
