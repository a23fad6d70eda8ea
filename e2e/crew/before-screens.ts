import type { Screen } from './walk.ts';

/** A joint before its first bolt. */
export const BEFORE: readonly Screen[] = [
  {
    name: 'before',
    go: async ({ toJoint, see }) => {
      await toJoint('FB-S1');
      await see('joint.datum');
    },
  },
  {
    name: 'before-assembly',
    go: async ({ page, say }) => {
      for (const box of (await page.getByRole('checkbox').all()).slice(0, 3)) await box.check();
      await page.getByRole('heading', { name: say('joint.checks') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'before-snug',
    go: async ({ page, say, press, see }) => {
      await press('joint.snug-no');
      await see('joint.snug-wait');
      await page.getByRole('heading', { name: say('joint.snug') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'before-mind',
    go: async ({ page, say }) => {
      await page.getByRole('heading', { name: say('joint.cautions') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'before-flange',
    go: async ({ page, toJoint, say, see }) => {
      await toJoint('PH-F1');
      await see('joint.permits');
      await page.getByRole('heading', { name: say('joint.permits') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'gaps',
    go: async ({ page, say, press }) => {
      const fields = page.getByLabel(/, mm$/);
      const count = await fields.count();
      for (let at = 0; at < count; at += 1) await fields.nth(at).fill(`1,${at}5`);
      await press('app.save');
      await page.getByText(/1: 1[.,]05 mm/).waitFor();
      await page.getByRole('heading', { name: say('joint.gaps') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'datum-other',
    go: async ({ page, toJoint, press, say }) => {
      await toJoint('PH-F3');
      await press('joint.datum-other');
      await page.getByLabel(say('joint.datum-where')).fill('below');
      await page.getByRole('heading', { name: say('joint.datum') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'datum-stop',
    go: async ({ page, press, say, see }) => {
      await press('app.save');
      await see('joint.datum-stop');
      await page.getByRole('heading', { name: say('joint.datum') }).evaluate((one) => one.scrollIntoView());
    },
  },
];
