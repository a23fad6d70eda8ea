import { makeNewer } from '../newer-version.ts';
import { hold } from '../phone.ts';
import { asPlanner } from '../planner.ts';
import { reissue, withSetting } from '../reissue.ts';
import { JOB } from '../yard.ts';
import type { Screen, Walk } from './walk.ts';

/** What goes wrong around a joint: the plan, the network, the device. */
export const TROUBLE: readonly Screen[] = [
  {
    name: 'plan-changed',
    go: async (walk) => {
      await reissue(walk.yard, 'P-2', (joint) => (joint.tag === 'FB-S1' ? withSetting(joint, 'gear 3, step 6', 'gear 3, step 5') : joint));
      await sent(walk);
      await walk.toJoint('FB-S1');
      await walk.see('joint.reissued', { number: 'P-2' });
    },
  },
  {
    name: 'hold-point',
    go: async ({ toJoint, see }) => {
      await toJoint('PH-F4');
      await see('joint.release-seen');
    },
  },
  {
    name: 'hold-point-tighten',
    go: async ({ toJoint, see }) => {
      await toJoint('PH-F4', '/tighten');
      await see('today.held');
    },
  },
  {
    name: 'not-found',
    go: async ({ to, see }) => {
      await to('/nowhere');
      await see('app.not-found');
    },
  },
  {
    name: 'offline',
    go: async ({ browser, page, toJoint, say, to }) => {
      await browser.context.setOffline(true);
      await toJoint('FB-S3', '/tighten');
      await page.getByText(say('tighten.ends')).waitFor();
      await page.getByRole('link', { name: say('else.battery') }).click();
      await page.getByRole('button', { name: 'SK-P1', exact: true }).click();
      await page.getByRole('button', { name: `${say('else.gauge-of')} 4` }).click();
      await to('/');
      const [noNetwork] = say('sync.offline', { count: 0 }).split('.');
      await page.getByText(noNetwork!).first().waitFor();
    },
  },
  {
    name: 'clock',
    go: async (walk) => {
      const { browser, page, say } = walk;
      await browser.context.setOffline(false);
      await page.clock.setSystemTime(Date.now() + 3 * 3_600_000);
      await sent(walk);
      await page.getByText(say('sync.clock', { minutes: 180 })).waitFor();
    },
  },
  {
    name: 'elsewhere',
    go: async (walk) => {
      await walk.page.clock.setSystemTime(Date.now());
      await walk.to('/');
      await walk.see('today.scan');
      walk.page = await walk.browser.context.newPage();
      await walk.to('/');
      await walk.see('elsewhere.text');
    },
  },
  {
    name: 'elsewhere-lost',
    go: async (walk) => {
      await walk.press('elsewhere.here');
      await walk.see('today.scan');
      const [first] = walk.browser.context.pages().filter((page) => page !== walk.page && page.url().startsWith(walk.yard.server.url));
      const second = walk.page;
      walk.page = first!;
      await walk.see('elsewhere.lost');
      await second.close();
    },
  },
  {
    name: 'storage-full',
    go: async (walk) => {
      // a browser begun afresh has set no space aside for the app yet
      walk.browser = await walk.browser.killAndOpen();
      walk.page = await walk.browser.context.newPage();
      const { page, say } = walk;
      const session = await walk.browser.context.newCDPSession(page);
      await session.send('Storage.overrideQuotaForOrigin', { origin: walk.yard.server.url, quotaSize: 1 });
      await walk.toJoint('FB-S3', '/tighten');
      await walk.see('tighten.ends');
      await hold(page, say).catch(() => undefined);
      await page.mouse.up();
      await walk.see('storage.full');
      await page.evaluate(() => window.scrollTo(0, 0));
      await session.send('Storage.overrideQuotaForOrigin', { origin: walk.yard.server.url });
    },
  },
  {
    name: 'stop',
    go: async (walk) => {
      await walk.yard.office.device.append(JOB, 'plan-withdrawn', { number: 'P-2', reason: 'HV24-611: k = 0,19' });
      await walk.yard.sync();
      await sent(walk);
      await walk.toJoint('FB-S3', '/tighten');
      await walk.see('stopped.withdrawn', { number: 'P-2' });
    },
  },
  {
    name: 'stop-joint',
    go: async ({ toJoint, see }) => {
      await toJoint('FB-S3');
      await see('stopped.withdrawn', { number: 'P-2' });
    },
  },
  {
    name: 'stop-today',
    go: async ({ to, page }) => {
      await to('/');
      await page.getByText(/P-2/).first().waitFor();
    },
  },
  {
    name: 'revoked',
    go: async ({ yard, to, page, see }) => {
      await to('/settings');
      const device = await page.getByText(/^d-[0-9a-z]{26}$/).textContent();
      const planner = await asPlanner(yard.server);
      await planner('DELETE', `/devices/${device}`);
      await to('/');
      await see('sync.revoked');
    },
  },
  {
    name: 'update',
    go: async ({ yard, to, page, see }) => {
      await to('/settings');
      await see('settings.guard');
      await yard.restart((product) => makeNewer(product!));
      await page.evaluate(() =>
        navigator.serviceWorker
          .getRegistration()
          .then((one) => one?.update())
          .then(() => undefined),
      );
      await see('app.update');
      await page.evaluate(() => window.scrollTo(0, 0));
    },
  },
];

/** Comes to the first page and waits until everything is sent. */
async function sent({ to, page, say }: Walk): Promise<void> {
  await to('/');
  await page.getByText(say('sync.synced', { time: '' }).trim()).waitFor();
}
