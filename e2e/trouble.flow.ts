import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join as path } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { jointCode } from '../packages/papers/src/card-pdf/codes.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { makeNewer, ownProduct } from './newer-version.ts';
import { hold, join, name, openJoint, prepare, send, where } from './phone.ts';
import { asPlanner } from './planner.ts';
import { reissue, withSetting } from './reissue.ts';
import { squareVideo } from './square-video.ts';
import { CREW, JOB, openYard, type Yard } from './yard.ts';

const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true };
const folder = mkdtempSync(path(tmpdir(), 'clampwright-trouble-'));
let yard: Yard;
let code = 0;
beforeAll(async () => {
  yard = await openYard(8);
});
afterAll(async () => {
  await yard?.close();
  rmSync(folder, { recursive: true });
});

/** A phone of its own that has joined the job and been told who holds it. */
async function phone(more: readonly string[] = []): Promise<{ readonly browser: OpenBrowser; readonly page: Page }> {
  const browser = await openBrowser(PHONE, more);
  const page = await browser.context.newPage();
  await join(page, yard.server.url, yard.codes[code++]!);
  await name(page, CREW);
  return { browser, page };
}

const toBolts = async (page: Page, tag: string) => {
  await openJoint(page, tag);
  await page.getByRole('link', { name: 'Go to the bolts' }).click();
};
const snugOf = async (tag: string): Promise<number> =>
  [...(await yard.book()).state('joint', yard.jointOf(tag)).bolts.values()].flatMap(({ steps }) => steps.snug ?? []).length;

describe('one phone', () => {
  let browser: OpenBrowser;
  let page: Page;
  beforeAll(async () => {
    ({ browser, page } = await phone());
    await prepare(page, 'FB-S1', ['SK-B204']);
    await hold(page);
  });
  afterAll(async () => {
    await browser?.close();
  });
  beforeEach(async () => {
    await page.goto(yard.server.url);
    await page.getByLabel('Find a joint by its tag').waitFor();
  });

  test('a camera that is refused, or not there: said, and the tag is typed instead', async () => {
    await page.getByRole('link', { name: 'Scan a tag' }).click();
    await page.getByText(/Type the tag instead/).waitFor();
    await page.getByRole('link', { name: /by its tag/ }).click();
    await openJoint(page, 'FB-S1');
  });

  test('a tool that no plan names and no chart is loaded of: none of its settings may be used', async () => {
    await page.getByLabel('Another tool, by its serial number').fill('ZZ-1');
    await page.getByRole('button', { name: /ZZ-1/ }).click();
    await page.getByText(/None of its settings may be used/).waitFor();
    expect(await page.getByRole('button', { name: 'Passed' }).count()).toBe(0);
  });

  test('the page closed in the middle of the hold: nothing is recorded; closed at its end: one bolt', async () => {
    await toBolts(page, 'FB-S1');
    const before = await where(page);
    const press = async () => {
      const box = (await page.getByRole('button', { name: /^Tightened/ }).boundingBox())!;
      await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
      await page.mouse.down();
    };
    await press();
    await page.waitForFunction(() => document.querySelector('[data-holding="true"]'));
    const bolts = page.url();
    await page.close();
    page = await browser.context.newPage();
    await page.goto(bolts);
    await page.getByText('Done when').waitFor();
    expect(await where(page)).toBe(before);
    await press();
    await page.waitForFunction((text) => document.querySelector('[class*="pull"]')?.textContent !== text, before);
    const next = await where(page);
    await page.close();
    page = await browser.context.newPage();
    await page.goto(bolts);
    await page.getByText('Done when').waitFor();
    expect(await where(page)).toBe(next);
    await send(page);
    expect(await snugOf('FB-S1')).toBe(2);
  });

  test('two pages open: the second says so and may take over; the first then records nothing', async () => {
    await toBolts(page, 'FB-S1');
    const second = await browser.context.newPage();
    await second.goto(yard.server.url);
    await second.getByRole('heading', { name: 'Open in another window' }).waitFor();
    await second.getByRole('button', { name: 'Go on here' }).click();
    await second.getByLabel('Find a joint by its tag').waitFor();
    await page.getByText(/Recording went on in another window/).waitFor();
    expect(await page.getByRole('button', { name: /^Tightened/ }).count()).toBe(0);
    await page.close();
    page = second;
  });

  test('a clock that is wrong: said with how many minutes', async () => {
    await page.clock.setSystemTime(Date.now() + 3 * 3_600_000);
    await page.reload();
    await page.getByText(/The clock of this device is 180 minutes off/).waitFor();
    await page.clock.setSystemTime(Date.now());
  });

  test('an older server, a newer one: what they answer is said, and nothing waits in vain', async () => {
    // what a server says to an address it does not know yet, and to an app it no longer speaks with
    for (const [status, body] of [
      [404, { notices: [{ code: 'not-found', params: {} }] }],
      [400, { notices: [{ code: 'spoken-by-later-servers', params: {} }] }],
    ] as const) {
      await page.route('**/api/v1/books/**', (route) => route.fulfill({ status, json: body }));
      await page.reload();
      await page.getByText(/The server refuses/).waitFor();
      await page.unroute('**/api/v1/books/**');
    }
    await toBolts(page, 'FB-S1');
    await hold(page);
    await send(page);
    expect(await snugOf('FB-S1')).toBe(3);
  });

  test('the device is full: said, nothing is shown as recorded, and it goes on when there is space', async () => {
    // a browser begun afresh has set no space aside for the app yet
    browser = await browser.killAndOpen();
    page = await browser.context.newPage();
    const session = await browser.context.newCDPSession(page);
    const origin = yard.server.url;
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await page.goto(`${origin}/joint/${yard.jointOf('FB-S1')}/tighten`);
    await page.getByText('Done when').waitFor();
    const before = await where(page);
    const button = page.getByRole('button', { name: /^Tightened/ });
    const box = (await button.boundingBox())!;
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.getByText(/The device is full/).waitFor();
    await page.mouse.up();
    expect(await where(page)).toBe(before);
    await session.send('Storage.overrideQuotaForOrigin', { origin });
    await hold(page);
    expect(await page.getByText(/The device is full/).count()).toBe(0);
    await send(page);
    expect(await snugOf('FB-S1')).toBe(4);
  });

  test('the browser is asked to keep what is recorded, and its answer shown', async () => {
    await page.getByText(/The browser (keeps what is recorded|may remove what is recorded)/).waitFor();
    const persisted = await page.evaluate(() => navigator.storage.persisted());
    await page.getByText(persisted ? /keeps what is recorded/ : /may remove what is recorded/).waitFor();
  });

  test('the plan is issued anew while the phone is away: what differs is shown, and work goes on', async () => {
    await reissue(yard, 'P-2', (joint) => (joint.tag === 'FB-S1' ? withSetting(joint, 'gear 3, step 6', 'gear 3, step 5') : joint));
    await send(page);
    await openJoint(page, 'FB-S1');
    await page.getByText('The plan was issued anew: P-2.').waitFor();
    await page
      .getByText(/gear 3, step 6/)
      .first()
      .waitFor();
    await page
      .getByText(/gear 3, step 5/)
      .first()
      .waitFor();
    await page.getByRole('link', { name: 'Back' }).click();
    await openJoint(page, 'PH-F1');
    await page.getByRole('link', { name: 'Inspect' }).waitFor();
    expect(await page.getByText(/was issued anew/).count()).toBe(0);
  });

  test('STOP, withdrawn: the next bolt is not to be had', async () => {
    await toBolts(page, 'FB-S1');
    await page.getByText('Done when').waitFor();
    await yard.office.device.append(JOB, 'plan-withdrawn', { number: 'P-2', reason: 'wrong lot' });
    await yard.sync();
    await send(page);
    await page.goto(`${yard.server.url}/joint/${yard.jointOf('FB-S1')}/tighten`);
    await page
      .getByText(/withdrawn/i)
      .first()
      .waitFor();
    expect(await page.getByRole('button', { name: /^Tightened/ }).count()).toBe(0);
  });

  test('the device is revoked: said, and what it holds is kept', async () => {
    const device = (await page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          const opening = indexedDB.open('clampwright');
          opening.onsuccess = () => {
            const asked = opening.result.transaction('kept').objectStore('kept').get('identity');
            asked.onsuccess = () => resolve(asked.result.device as string);
          };
        }),
    ))!;
    const planner = await asPlanner(yard.server);
    expect((await planner('DELETE', `/devices/${device}`)).status).toBe(204);
    await page.reload();
    await page.getByText(/This device was revoked. What it holds is kept/).waitFor();
    await openJoint(page, 'FB-S1');
  });
});

test('a tag is scanned by the camera: the right one leads to its joint, one of another yard is refused', async () => {
  for (const [file, job, tag] of [
    ['right.y4m', { title: '', site: '' }, 'FB-S1'],
    ['wrong.y4m', { title: 'another job', site: 'elsewhere' }, 'FB-S1'],
  ] as const) {
    const { title = '', site = '' } = (await yard.book()).state('book', 'book');
    const video = path(folder, file);
    squareVideo(video, jointCode(file === 'right.y4m' ? { title, site } : job, { tag }));
    const { browser, page } = await phone([
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${video}`,
    ]);
    await page.getByRole('link', { name: 'Scan a tag' }).click();
    if (file === 'right.y4m') await page.getByRole('heading', { name: 'FB-S1', exact: true }).waitFor();
    else await page.getByText('This square is of no joint of this job.').waitFor();
    await browser.close();
  }
}, 120_000);

test('a newer app comes while a pass is under way: it neither loses nor restarts it, and is put in place when somebody says so', async () => {
  const product = ownProduct(folder);
  const own = await openYard(1, { product });
  const browser = await openBrowser(PHONE);
  const page = await browser.context.newPage();
  await join(page, own.server.url, own.codes[0]!);
  // as on every later day: the page comes from what the phone keeps
  await page.reload();
  await name(page, CREW);
  await prepare(page, 'FB-S1', ['SK-B204']);
  await hold(page);
  await own.restart(() => makeNewer(product));
  await page.evaluate(() =>
    navigator.serviceWorker
      .getRegistration()
      .then((one) => one?.update())
      .then(() => undefined),
  );
  await page.waitForFunction(() => navigator.serviceWorker.getRegistration().then((one) => one?.waiting != null));
  // in the joint nobody is asked, and work goes on with the version in hand
  expect(await page.getByRole('button', { name: 'Use it now' }).count()).toBe(0);
  await hold(page);
  const bolt = await where(page);
  // out of the joint it is offered
  await page.getByRole('link', { name: 'Back' }).click();
  await page.getByRole('heading', { name: 'FB-S1', exact: true }).waitFor();
  await page.getByRole('link', { name: 'Back' }).click();
  await page.getByRole('button', { name: 'Use it now' }).click();
  await page.locator('meta[name="version"]').waitFor({ state: 'attached' });
  await toBolts(page, 'FB-S1');
  expect(await where(page)).toBe(bolt);
  await browser.close();
  await own.close();
}, 180_000);
