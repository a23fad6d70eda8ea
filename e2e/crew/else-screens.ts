import { hold } from '../phone.ts';
import type { Screen } from './walk.ts';

/** Something else than a bolt done: each short path, and where it leads. */
export const ELSE: readonly Screen[] = [
  {
    name: 'else',
    go: async ({ toJoint, press, see }) => {
      await toJoint('FB-S3', '/tighten');
      await press('tighten.else');
      await see('else.cut-out-text');
    },
  },
  {
    name: 'else-cut-out',
    go: async ({ press, see }) => {
      await press('else.cause-hot');
      await see('else.cut-out-next');
    },
  },
  {
    name: 'else-battery',
    go: async ({ page, say }) => {
      await page.getByRole('button', { name: 'SK-P3', exact: true }).click();
      await page.getByRole('heading', { name: new RegExp(say('else.gauge')) }).waitFor();
      await page.getByRole('heading', { name: new RegExp(say('else.gauge')) }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'battery-stop',
    go: async ({ page, say, press, see }) => {
      await page.getByRole('button', { name: `${say('else.gauge-of')} 0` }).click();
      await press('else.go-on');
      await see('tighten.battery-stop', { battery: 'SK-P3' });
    },
  },
  {
    name: 'else-trouble',
    go: async ({ page, press, say }) => {
      await press('else.battery');
      await press('else.bolt spun with nut');
      await page.getByLabel(say('else.note')).fill('…');
      await page.getByRole('heading', { name: say('tighten.else') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'else-recorded',
    go: async ({ press, see }) => {
      await press('else.record');
      await see('else.next-stop');
    },
  },
  {
    name: 'else-photo',
    go: async ({ page, press, see }) => {
      await press('else.go-on');
      await press('tighten.else');
      await page.locator('input[type=file]').setInputFiles('docs/screens/paper-tags.png');
      await see('else.photo-kept');
    },
  },
  {
    name: 'swap',
    go: async ({ toJoint, page, press, say }) => {
      await toJoint('FB-S1', '/tighten');
      await page.getByRole('button', { name: say('tighten.setting-seen', { setting: '' }).trim() }).click();
      await hold(page, say);
      await press('tighten.else');
      await press('else.swap');
      await page.getByRole('button', { name: /SK-B117/ }).waitFor();
    },
  },
  {
    name: 'swap-stops',
    go: async ({ page, see }) => {
      await page.getByRole('button', { name: /SK-W210/ }).click();
      await see('swap.stops', { tool: 'SK-W210' });
      await page.getByRole('heading', { name: /SK-W210/ }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'swap-settings',
    go: async ({ page }) => {
      await page.getByRole('button', { name: /SK-H031/ }).click();
      await page.getByRole('heading', { name: /SK-H031/ }).evaluate((one) => one.scrollIntoView());
    },
  },
];
