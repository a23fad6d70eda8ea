import { hold, prepare } from '../phone.ts';
import type { Screen } from './walk.ts';

/** One bolt after the other, and everything that stands in its way. */
export const BOLTS: readonly Screen[] = [
  {
    name: 'snug',
    go: async ({ page, to, say, see }) => {
      await to('/');
      await page.getByText('FB-S1').first().waitFor();
      await prepare(page, 'FB-S1', ['SK-B204'], say);
      await see('tighten.ends');
    },
  },
  {
    name: 'first-setting',
    go: async ({ page, say, see }) => {
      for (let bolt = 1; bolt <= 8; bolt += 1) await hold(page, say);
      await see('tighten.setting-first');
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
  {
    name: 'tighten',
    go: async ({ page, say, see }) => {
      for (let bolt = 1; bolt <= 3; bolt += 1) await hold(page, say);
      await see('tighten.done');
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
  {
    name: 'tighten-below',
    go: async ({ page }) => {
      await page.locator('figure').evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'why',
    go: async ({ page, say }) => {
      await page.getByText(say('app.why')).click();
      await page.getByText(say('app.why')).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'other-bolt',
    go: async ({ page, press, say }) => {
      await press('tighten.other-bolt');
      await page.getByLabel(say('tighten.other-bolt')).selectOption({ index: 2 });
      await page.getByLabel(say('tighten.other-why')).fill('…');
      await page.getByRole('heading', { name: say('tighten.other-bolt') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'batch',
    go: async ({ page, press, say, see }) => {
      await press('tighten.batch');
      await see('tighten.batch-text');
      await page.getByRole('heading', { name: say('tighten.batch') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'radio',
    go: async ({ page, press, see }) => {
      await press('tighten.radio');
      await see('tighten.radio-back');
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
  {
    name: 'setting-changes',
    go: async ({ page, toJoint, say, see }) => {
      await toJoint('FB-S1', '/tighten');
      for (let bolt = 4; bolt <= 8; bolt += 1) await hold(page, say);
      await see('tighten.setting-changes');
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
  {
    name: 'tool-unchecked',
    go: async ({ page, to, toJoint, say, press, see }) => {
      await to('/tool/SK-B204');
      await page.getByLabel(say('joint.tool-setting')).fill('gear 2, step 9');
      await press('joint.tool-failed');
      await see('joint.tool-stop');
      await toJoint('FB-S1', '/tighten');
      await see('tighten.tool-unchecked', { tool: 'SK-B204' });
    },
  },
  {
    name: 'second-person',
    go: async ({ page, to, toJoint, say, press }) => {
      await press('joint.tool-check', { tool: 'SK-B204' });
      await page.getByLabel(say('joint.tool-setting')).fill('gear 2, step 9');
      await press('joint.tool-passed');
      await page.getByText(say('tighten.ends')).waitFor();
      await to('/settings');
      await page.getByLabel(say('settings.guard')).selectOption('second');
      await toJoint('FB-S1', '/tighten');
      await page.getByRole('button', { name: say('tighten.setting-seen', { setting: '' }).trim() }).click();
      await page.getByRole('button', { name: say('tighten.done'), exact: true }).click();
      await page.getByRole('alert').waitFor();
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
  {
    name: 'angle',
    go: async ({ page, to, say, see, trade }) => {
      await to('/settings');
      await page.getByLabel(say('settings.guard')).selectOption('hold');
      await to('/');
      await page.getByText('FB-S3').first().waitFor();
      await prepare(page, 'FB-S3', [], say);
      for (let bolt = 1; bolt <= 16; bolt += 1) await hold(page, say);
      await see('tighten.step', { step: trade.step('second step'), n: 3, of: 3 });
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
];
