import type { Page } from 'playwright-core';
import { ENGLISH, type Say } from '../packages/words/src/app/index.ts';

/** What a crew does on a phone, by the words on its buttons: in English, where no other language is given. */
export async function join(page: Page, url: string, code: string, say: Say = ENGLISH.say): Promise<void> {
  await page.goto(`${url}/#join=${code}`);
  await page.getByRole('button', { name: say('enrol.join'), exact: true }).click();
  await page.getByRole('heading', { name: 'Skerrow Sound' }).waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
}

export async function name(
  page: Page,
  { name: person, pin }: { readonly name: string; readonly pin: string },
  say: Say = ENGLISH.say,
): Promise<void> {
  await page.getByRole('link', { name: say('who.title') }).click();
  await page.getByRole('button', { name: person }).click();
  await page.getByLabel(say('who.pin', { name: person })).fill(pin);
  await page.getByRole('button', { name: say('app.confirm'), exact: true }).click();
  await page.getByText(say('who.holds', { name: person })).waitFor();
}

/** Everything before the first bolt, all of it right. */
export async function prepare(page: Page, tag: string, tools: readonly string[], say: Say = ENGLISH.say): Promise<void> {
  for (const tool of tools) {
    await page.getByRole('link', { name: new RegExp(tool) }).click();
    await page.getByLabel(say('joint.tool-setting')).fill('gear 2, step 9');
    await page.getByLabel(say('joint.tool-reading')).fill('402,5');
    await page.getByRole('button', { name: say('joint.tool-passed'), exact: true }).click();
    await page.getByRole('heading', { name: say('today.tools') }).waitFor();
  }
  await openJoint(page, tag, say);
  await page.getByRole('button', { name: say('joint.datum-right'), exact: true }).click();
  for (const box of await page.getByRole('checkbox').all()) await box.check();
  await page.getByRole('button', { name: say('joint.checks-fine'), exact: true }).click();
  const firm = page.getByRole('button', { name: say('joint.snug-yes'), exact: true });
  if (await firm.isVisible()) await firm.click();
  await page.getByRole('link', { name: say('joint.begin') }).click();
}

export const openJoint = async (page: Page, tag: string, say: Say = ENGLISH.say): Promise<void> => {
  await page.getByLabel(say('today.find')).fill(tag);
  await page.getByRole('button', { name: say('app.confirm'), exact: true }).click();
  await page.getByRole('heading', { name: tag, exact: true }).waitFor();
};

/** Holds the main action until it is full, as a finger does, and waits until the next bolt is asked for. */
export async function hold(page: Page, say: Say = ENGLISH.say): Promise<void> {
  await page.getByText(say('tighten.ends')).waitFor();
  const seen = page.getByRole('button', { name: say('tighten.setting-seen', { setting: '' }).trim() });
  if (await seen.isVisible()) await seen.click();
  const before = await where(page);
  const button = page.getByRole('button', { name: new RegExp(`^${say('tighten.done')}`) });
  await button.scrollIntoViewIfNeeded();
  const box = (await button.boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.waitForFunction((text) => document.querySelector('[class*="pull"]')?.textContent !== text, before, { timeout: 5000 });
  await page.mouse.up();
}

export const where = (page: Page): Promise<string | null | undefined> =>
  page.evaluate(() => document.querySelector('[class*="pull"]')?.textContent);

/** Takes another bolt than the next one, with a reason. */
export async function holdOther(page: Page, bolt: number, why: string): Promise<void> {
  await page.getByRole('button', { name: 'Take another bolt' }).click();
  await page.getByLabel('Take another bolt').selectOption(String(bolt));
  await page.getByLabel('Why not the next one?').fill(why);
  await page.getByRole('button', { name: 'Confirm' }).click();
  await page.getByText(`Bolt ${bolt}`, { exact: true }).waitFor();
  await hold(page);
}

export async function deviceOf(page: Page, say: Say = ENGLISH.say): Promise<string> {
  await page.getByRole('link', { name: say('settings.title') }).click();
  const id = await page.getByText(/^d-[0-9a-z]{26}$/).textContent();
  await page.getByRole('link', { name: say('app.back') }).click();
  return id!;
}

/** Comes back into the network and waits until everything is sent. */
export async function send(page: Page): Promise<void> {
  await page
    .getByRole('link', { name: 'Back' })
    .first()
    .click({ timeout: 500 })
    .catch(() => undefined);
  await page.goto(new URL('/', page.url()).href);
  await page.getByText('Everything is sent.').waitFor();
}
