import { test } from 'vitest';
import { OFFICE_SCREENS } from './office/screens.ts';
import { walkOffice } from './office/walk.ts';
import { accessible, fitsAtTwice, reachedByKeys } from './sound.ts';

test('every screen of the office: axe, light and dark, twice the size, the keyboard', async () => {
  await walkOffice(OFFICE_SCREENS, { language: 'en', viewport: { width: 820, height: 1180 } }, async ({ page }, name) => {
    await accessible(page, name);
    await fitsAtTwice(page, name);
    await reachedByKeys(page, name);
  });
}, 600_000);
