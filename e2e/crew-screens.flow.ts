import { expect, test } from 'vitest';
import { CREW_SCREENS } from './crew/screens.ts';
import { walk } from './crew/walk.ts';
import { accessible, bigEnough, fitsAtTwice, reachedByKeys } from './sound.ts';

const viewport = { width: 360, height: 740 };

test('every screen that a crew sees: axe, contrast, targets for a glove, twice the size, the keyboard', async () => {
  await walk(CREW_SCREENS, { language: 'en', viewport, bypassCSP: true }, async ({ page }, name) => {
    expect(await page.evaluate(() => matchMedia('(prefers-reduced-motion: reduce)').matches)).toBe(true);
    await accessible(page, name, ['color-contrast-enhanced']);
    await fitsAtTwice(page, name);
    await bigEnough(page, name);
    await reachedByKeys(page, name);
  });
}, 900_000);

test('in German, whose words are longer: twice the size, and targets for a glove', async () => {
  await walk(CREW_SCREENS, { language: 'de', viewport }, async ({ page }, name) => {
    await fitsAtTwice(page, name);
    await bigEnough(page, name);
  });
}, 600_000);
