import { hold } from '../phone.ts';
import type { Screen } from './walk.ts';

/** All bolts done: signed, inspected, loosened; and the valves. */
export const AFTER: readonly Screen[] = [
  {
    name: 'all-done',
    go: async ({ page, toJoint, say, see }) => {
      await toJoint('FB-S1', '/tighten');
      while (!(await page.getByText(say('joint.all-done')).isVisible())) {
        await page
          .getByText(say('tighten.ends'))
          .or(page.getByText(say('joint.all-done')))
          .first()
          .waitFor();
        if (await page.getByText(say('tighten.ends')).isVisible()) await hold(page, say);
      }
      await see('joint.all-done');
    },
  },
  {
    name: 'sign',
    go: async ({ press, toJoint, see, page, say }) => {
      await toJoint('FB-S1');
      await see('joint.all-done');
      await press('joint.sign');
      await page.getByRole('heading', { name: say('today.signed') }).waitFor();
      await toJoint('FB-S1');
      await see('joint.all-done');
    },
  },
  {
    name: 'inspect',
    go: async ({ page, toJoint, say }) => {
      await toJoint('FB-S1', '/inspect');
      await page.getByLabel(say('inspect.wrench')).fill('IW-7');
      await page.getByRole('button', { name: say('inspect.passed'), exact: true }).waitFor();
    },
  },
  {
    name: 'inspect-own-wrench',
    go: async ({ page, say, see }) => {
      await page.getByLabel(say('inspect.wrench')).fill('SK-B204');
      await see('inspect.wrench-own', { tool: 'SK-B204' });
    },
  },
  {
    name: 'inspect-rejected',
    go: async ({ page, say }) => {
      await page.getByLabel(say('inspect.wrench')).fill('IW-7');
      const extended = page.getByText(say('inspect.extended', { bolts: '' }).trim());
      while (!(await extended.isVisible())) await look(page, say('inspect.failed'));
      await extended.waitFor();
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
  {
    name: 'inspect-failed',
    go: async ({ page, say }) => {
      while (await page.getByRole('button', { name: say('inspect.passed'), exact: true }).isVisible())
        await look(page, say('inspect.passed'));
      await page.getByRole('button', { name: say('inspect.sign') }).waitFor();
    },
  },
  {
    name: 'findings',
    go: async ({ page, toJoint, see, say }) => {
      await toJoint('FB-S1');
      await see('joint.findings');
      await page.getByRole('heading', { name: say('joint.findings') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'loosen',
    go: async ({ page, toJoint, say, see }) => {
      await toJoint('FB-S1', '/loosen');
      await see('loosen.text');
      await page.getByRole('checkbox').nth(1).check();
      await page.getByLabel(say('loosen.reason')).fill('…');
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
  {
    name: 'valve',
    go: async ({ page, yard, to, see }) => {
      await to(`/valve/${yard.jointOf('GV-11')}`);
      await page.getByRole('button', { name: '+5' }).click();
      await see('valve.at', { at: 5, turns: 30 });
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
  {
    name: 'valve-off',
    go: async ({ page, say, see }) => {
      // five at a time, the last three one by one
      for (const at of [10, 15, 20, 25, 26, 27, 28]) {
        await page.getByRole('button', { name: at > 25 ? '+1' : '+5' }).click();
        await see('valve.at', { at, turns: 30 });
      }
      await page.getByText(say('valve.off')).evaluate((one) => one.scrollIntoView({ block: 'center' }));
    },
  },
  {
    name: 'valve-must-not',
    go: async ({ yard, to, see }) => {
      await to(`/valve/${yard.jointOf('GV-12')}`);
      await see('valve.stop');
    },
  },
];

/** Tells of one bolt, and waits until the next is asked for. */
async function look(page: Parameters<typeof hold>[0], verdict: string): Promise<void> {
  const bolt = await page.getByRole('heading', { level: 2 }).first().textContent();
  await page.getByRole('button', { name: verdict, exact: true }).click();
  await page.getByRole('heading', { level: 2, name: bolt!, exact: true }).waitFor({ state: 'detached' });
}
