// `npm run screens`: pictures of every page at phone, tablet and laptop size, light and dark, into docs/screens.
import { mkdirSync } from 'node:fs';
import { appScreens } from './app-screens.ts';
import { openBrowser } from './browser.ts';
import { paperScreens } from './paper-screens.ts';
import { showDemo } from './show-demo.ts';

const SIZES = { phone: { width: 360, height: 740 }, tablet: { width: 820, height: 1180 }, laptop: { width: 1440, height: 900 } } as const;
const PAGES = {
  plan: '',
  joint: 'joint/FB-S1',
  ring: 'joint/TB-R1',
  stop: 'joint/TB-R2',
  flange: 'joint/PH-F1',
  cards: 'cards?tag=FB-S1',
  'flange-card': 'cards?tag=PH-F1',
} as const;

mkdirSync('docs/screens', { recursive: true });
const shown = await showDemo();
try {
  for (const scheme of ['light', 'dark'] as const) {
    const { context, close } = await openBrowser({ colorScheme: scheme });
    for (const [size, viewport] of Object.entries(SIZES)) {
      const page = await context.newPage();
      await page.setViewportSize(viewport);
      for (const [name, path] of Object.entries(PAGES)) {
        if (name.endsWith('card') && size !== 'laptop') continue;
        if ((name === 'cards' || name.endsWith('card')) && (scheme === 'dark' || size !== 'laptop')) continue;
        await page.goto(new URL(path, shown.url).href);
        await page.evaluate(() => document.fonts.ready);
        await page.screenshot({
          path: `docs/screens/${name}-${size}-${scheme}.png`,
          fullPage: size !== 'laptop' || name === 'flange' || name.endsWith('card'),
        });
      }
      await page.close();
    }
    await close();
  }
} finally {
  await shown.stop();
}
await paperScreens('docs/screens');
console.log('docs/screens is up to date');
await appScreens();
