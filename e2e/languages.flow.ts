import { expect, test } from 'vitest';
import { englishFinder, textsOn } from './english-texts.ts';
import { OFFICE_SCREENS } from './office/screens.ts';
import { walkOffice } from './office/walk.ts';

/** What people of the yard wrote, in their own language. */
const TOLD = ['planner', 'Office', 'washer turned with the nut', 'engineer of record', 'battery wrench', 'Holm calibration'];

test.each(['de', 'pl', 'es', 'pt'] as const)(
  'no screen of the office says anything in English where it is read in %s',
  async (language) => {
    const isEnglish = await englishFinder(language, TOLD);
    const found: Record<string, string[]> = {};
    await walkOffice(OFFICE_SCREENS, { language, viewport: { width: 1440, height: 900 } }, async ({ page }, name) => {
      await page.locator(`html[lang=${language}]`).waitFor();
      const english = (await textsOn(page)).filter(isEnglish);
      if (english.length > 0) found[name] = english;
    });
    expect(found).toEqual({});
  },
  240_000,
);
