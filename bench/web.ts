// `npm run bench:web`: the crew's screens in a real browser, on the built app and the server as it ships. Medians of several loads.
import type { CDPSession, Page } from 'playwright-core';
import { type OpenBrowser, openBrowser } from '../e2e/browser.ts';
import { hold, join, name, prepare } from '../e2e/phone.ts';
import { CREW, JOB, openYard, type Yard } from '../e2e/yard.ts';
import { jobFolder } from '../packages/cli/src/job-folder.ts';
import type { OpenFile } from '../packages/papers/src/index.ts';
import { boardBench } from './web-board.ts';
import { queue, tellAll, turned } from './web-jobs.ts';
import { lighthouseScores } from './web-lighthouse.ts';
import { webPlannerBench } from './web-planner.ts';
import { scriptBytes } from './web-script.ts';

/** The demo with a ring of 120 bolts. */
const demo = jobFolder('demo');
const ring120: OpenFile = (path) => {
  const bytes = demo(path);
  if (path !== 'joints.csv' || typeof bytes === 'string') return bytes;
  return new TextEncoder().encode(new TextDecoder().decode(bytes).replaceAll('ring,72', 'ring,120'));
};
const PORT = 9333;
const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true };
const LOADS = 5;
const middle = (values: readonly number[], share = 0.5) =>
  [...values].sort((a, b) => a - b)[Math.min(values.length - 1, Math.floor(values.length * share))]!;
const row = (what: string, value: string, wanted: string) => console.log(`${what}: ${value} (wanted ${wanted})`);

async function slowed(page: Page, rate: number): Promise<CDPSession> {
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
  return session;
}

/** Milliseconds from the start of the navigation until `selector` is on the page, by the page's own clock. */
async function untilShown(page: Page, url: string, selector: string): Promise<number> {
  // as text: a translated function would call a helper that the page does not have
  await page.addInitScript(`{
    const look = () => document.querySelector(${JSON.stringify(selector)}) ? (window.shown ??= performance.now()) : requestAnimationFrame(look);
    requestAnimationFrame(look);
  }`);
  await page.goto(url);
  await page.waitForFunction(() => (window as unknown as { shown?: number }).shown !== undefined);
  return page.evaluate(() => (window as unknown as { shown: number }).shown);
}

async function loads(phone: OpenBrowser, url: string, selector: string, rate: number): Promise<number> {
  const times: number[] = [];
  for (let load = 0; load < LOADS; load += 1) {
    const page = await phone.context.newPage();
    await slowed(page, rate);
    times.push(await untilShown(page, url, selector));
    await page.close();
  }
  return middle(times);
}

/** Gzipped bytes of every script that the tighten screen has fetched. */
async function scriptOf(phone: OpenBrowser, url: string): Promise<number> {
  const page = await phone.context.newPage();
  await page.goto(url);
  await page.locator('[class*="pull"]').waitFor();
  const bytes = await scriptBytes(page);
  await page.close();
  return bytes;
}

/** From the end of the hold to the page that says the bolt is recorded, and tasks above 50 ms meanwhile. */
async function taps(page: Page, rate: number, count: number): Promise<{ readonly p95: number; readonly long: readonly number[] }> {
  const session = await slowed(page, rate);
  await page.evaluate(() => {
    const told = window as unknown as { long: number[] };
    told.long = [];
    new PerformanceObserver((list) => told.long.push(...list.getEntries().map(({ duration }) => duration))).observe({ type: 'longtask' });
  });
  const times: number[] = [];
  for (let tap = 0; tap < count; tap += 1) {
    const seen = page.getByRole('button', { name: /Second person: the tool shows/ });
    if (await seen.isVisible()) await seen.click();
    const button = page.getByRole('button', { name: /^Tightened/ });
    await button.scrollIntoViewIfNeeded();
    times.push(
      await button.evaluate(
        (element) =>
          new Promise<number>((resolve) => {
            const pull = document.querySelector('[class*="pull"]')!.parentElement!;
            const before = document.querySelector('[class*="pull"]')!.textContent;
            let held = 0;
            // full when the button is disabled, or gone: from then on the person waits
            const watch = new MutationObserver(() => {
              if (held === 0 && (element as HTMLButtonElement).dataset.holding === 'false') held = performance.now();
              if (document.querySelector('[class*="pull"]')?.textContent === before) return;
              watch.disconnect();
              resolve(performance.now() - held);
            });
            watch.observe(pull.parentElement!, { subtree: true, childList: true, attributes: true, characterData: true });
            element.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true, isPrimary: true }));
          }),
      ),
    );
  }
  const long = await page.evaluate(() => (window as unknown as { long: number[] }).long);
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  return { p95: middle(times, 0.95), long };
}

async function crew(yard: Yard, phone: OpenBrowser): Promise<void> {
  const page = await phone.context.newPage();
  await join(page, yard.server.url, yard.codes[0]!);
  await name(page, CREW);
  await page.getByText('Everything is sent.').waitFor();
  await prepare(page, 'TB-R1', ['SK-H031']);
  await hold(page);
  const url = page.url();
  await page.close();
  row('script of the tighten screen, gzip', `${((await scriptOf(phone, url)) / 1000).toFixed(0)} kB`, '≤ 200 kB');
  await phone.context.setOffline(true);
  row(
    'offline cold start until a bolt can be recorded, 4× slower',
    `${((await loads(phone, url, '[data-holding]', 4)) / 1000).toFixed(2)} s`,
    '< 1.0 s',
  );
  const work = await phone.context.newPage();
  await work.goto(url);
  await work.locator('[data-holding]').waitFor();
  const slow = await taps(work, 4, 20);
  row('held to durable and said so, p95 of 20 bolts, 4× slower', `${slow.p95.toFixed(0)} ms`, '< 100 ms');
  const quick = await taps(work, 1, 20);
  row('tasks above 50 ms in 20 bolts', quick.long.length === 0 ? 'none' : quick.long.map((one) => one.toFixed(0)).join(', '), 'none');
  row('the same, 4× slower', slow.long.length === 0 ? 'none' : slow.long.map((one) => one.toFixed(0)).join(', '), 'said');
  row('a ring of 120 bolts drawn anew', `${(await turned(work, 15)).toFixed(1)} ms`, '< 50 ms');
  await work.close();
  await phone.context.setOffline(false);
}

/** The demo's tower ring, 72 bolts in 3 steps, so many times over: about 100,000 entries when every bolt is told. */
const RINGS = 463;
const large: OpenFile = (path) => {
  const bytes = demo(path);
  if (path !== 'joints.csv' || typeof bytes === 'string') return bytes;
  const [heading, ...all] = new TextDecoder().decode(bytes).split('\n');
  const ring = all.find((line) => line.startsWith('TB-R1,'))!;
  const rows = Array.from({ length: RINGS }, (_, n) => ring.replace('TB-R1', `TB-${n}`));
  return new TextEncoder().encode([heading, ...rows].join('\n'));
};

/** A long job, cold, without network: until its joints are listed. */
async function bigJob(): Promise<void> {
  const yard = await openYard(1, { open: large });
  const phone = await openBrowser(PHONE);
  phone.context.setDefaultTimeout(600_000);
  const count = await tellAll(yard, JOB);
  const page = await phone.context.newPage();
  const begun = performance.now();
  await join(page, yard.server.url, yard.codes[0]!);
  await page.getByText('Everything is sent.').waitFor();
  console.log(`${count} entries of others brought onto the phone, cards and all: ${((performance.now() - begun) / 1000).toFixed(1)} s`);
  await page.close();
  await phone.context.setOffline(true);
  row(
    `a job of ${count} entries opens`,
    `${((await loads(phone, yard.server.url, 'input[enterkeyhint="go"]', 1)) / 1000).toFixed(2)} s`,
    '< 2 s',
  );
  await phone.close();
  await yard.close();
}

async function queued(yard: Yard, phone: OpenBrowser, count: number): Promise<void> {
  await queue(phone, yard, JOB, count);
  const page = await phone.context.newPage();
  await phone.context.setOffline(true);
  await page.goto(yard.server.url);
  await page.getByText(/entries are kept here/).waitFor();
  await phone.context.setOffline(false);
  const begun = performance.now();
  await page.getByRole('button', { name: 'Send now' }).click();
  await page.getByText('Everything is sent.').waitFor();
  row(`${count} queued entries sent`, `${((performance.now() - begun) / 1000).toFixed(2)} s`, '< 3 s');
  await page.close();
}

/** Scores of a crew's screen, as a page of its own. */
async function lighthouse(yard: Yard): Promise<void> {
  const scores = await lighthouseScores(`${yard.server.url}/joint/${yard.jointOf('TB-R1')}/tighten`, PORT, LOADS);
  for (const [what, score] of Object.entries(scores)) row(`Lighthouse, ${what}, phone profile, median of ${LOADS}`, String(score), '≥ 95');
}

/** Parts in their order; those of a phone share one that takes part in a job, which `crew` makes of it. */
const PARTS: Readonly<Record<string, (yard: Yard, phone: OpenBrowser) => Promise<void>>> = {
  crew,
  sync: (yard, phone) => queued(yard, phone, 10_000),
  lighthouse,
};
const ALONE: Readonly<Record<string, () => Promise<void>>> = { open: bigJob, board: boardBench, planner: webPlannerBench };

const asked = process.argv.slice(2);
const names = [...Object.keys(PARTS), ...Object.keys(ALONE)];
const unknown = asked.filter((name) => !names.includes(name));
if (unknown.length > 0) {
  console.error(`There is no part ${unknown.join(', ')}; there are ${names.join(', ')}.`);
  process.exit(2);
}
const wanted = (name: string) => asked.length === 0 || asked.includes(name);
if (Object.keys(PARTS).some(wanted)) {
  const yard = await openYard(1, { open: ring120 });
  const phone = await openBrowser(PHONE, [`--remote-debugging-port=${PORT}`]);
  try {
    for (const [name, part] of Object.entries(PARTS)) if (name === 'crew' || wanted(name)) await part(yard, phone);
  } finally {
    await phone.close();
    await yard.close();
  }
}
for (const [name, part] of Object.entries(ALONE)) if (wanted(name)) await part();
