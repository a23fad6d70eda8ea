import { deviceOf, join } from '../phone.ts';
import { CREW, JOB, MATE } from '../yard.ts';
import type { Screen, Walk } from './walk.ts';

/** The device joins, somebody is named, the day begins. */
export const DAY: readonly Screen[] = [
  {
    name: 'today-nobody',
    go: async (walk) => {
      const { page, yard, say, press, to, see } = walk;
      await press('practice.leave');
      await page.getByLabel(say('enrol.code')).waitFor();
      await join(page, yard.server.url, yard.codes[0]!, say);
      await enrolInBook(walk);
      await to('/');
      await see('who.needed');
    },
  },
  {
    name: 'who',
    go: async ({ page, press }) => {
      await press('who.title');
      await page.getByRole('button', { name: CREW.name }).waitFor();
    },
  },
  {
    name: 'who-pin',
    go: async ({ page, press, say, see }) => {
      await page.getByRole('button', { name: CREW.name }).click();
      await page.getByLabel(say('who.pin', { name: CREW.name })).fill('9999');
      await press('app.confirm');
      await see('who.pin-wrong');
    },
  },
  {
    name: 'today',
    go: async ({ page, press, say, see }) => {
      await page.getByLabel(say('who.pin', { name: CREW.name })).fill(CREW.pin);
      await press('app.confirm');
      await see('who.holds', { name: CREW.name });
      await page.getByText(say('sync.synced', { time: '' }).trim()).waitFor();
    },
  },
  {
    name: 'today-lists',
    go: async ({ page, say }) => {
      await page.getByRole('heading', { name: say('today.valves') }).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'radio-stop',
    go: async ({ page, say, see }) => {
      await page.getByText(say('today.stop-code')).click();
      await page.getByLabel(say('enrol.code')).fill('0000');
      await see('today.stop-code-wrong');
      await page.getByText(say('today.stop-code')).evaluate((one) => one.scrollIntoView());
    },
  },
  {
    name: 'tag-not-here',
    go: async ({ page, to, say, press, see }) => {
      await to('/');
      await page.getByLabel(say('today.find')).fill('ZZ-9');
      await press('app.confirm');
      await see('today.not-here', { tag: 'ZZ-9' });
    },
  },
  {
    name: 'scan',
    go: async ({ page, browser, press, see }) => {
      await browser.context.grantPermissions(['camera']);
      await press('today.scan');
      await see('scan.text');
      await page.waitForFunction(() => (document.querySelector('video')?.currentTime ?? 0) > 0);
    },
  },
  { name: 'scan-wrong', go: ({ see }) => see('scan.wrong') },
  {
    name: 'tool-check',
    go: async ({ page, to, say }) => {
      await to('/tool/SK-B204');
      await page.getByLabel(say('joint.tool-setting')).fill('gear 2, step 9');
      await page.getByLabel(say('joint.tool-reading')).fill('402,5');
    },
  },
  {
    name: 'tool-failed',
    go: async ({ page, to, say, press, see }) => {
      await to('/tool/SK-H031');
      await page.getByLabel(say('joint.tool-setting')).fill('pump pressure 350 bar');
      await press('joint.tool-failed');
      await see('joint.tool-stop');
    },
  },
  {
    name: 'tool-unknown',
    go: async ({ to, see }) => {
      await to('/tool/ZZ-1');
      await see('joint.tool-unknown');
    },
  },
  {
    name: 'settings',
    go: async ({ to, see }) => {
      await to('/settings');
      await see('settings.guard');
    },
  },
  {
    name: 'shift',
    go: async ({ page, to, say, see }) => {
      await to('/shift');
      await see('shift.text');
      await page.getByLabel(say('shift.to')).selectOption({ label: MATE.name });
    },
  },
];

/** As the planner's browser does it when it sees a device of the job for the first time. */
async function enrolInBook({ page, yard, say }: Walk): Promise<void> {
  await yard.office.device.append(JOB, 'device-enrolled', { device: await deviceOf(page, say), key: '0'.repeat(64), name: 'phone 1' });
  await yard.sync();
}
