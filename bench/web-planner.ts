import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { openBrowser } from '../e2e/browser.ts';
import { showDemo } from '../e2e/show-demo.ts';

const HEAD = 'joint,rule set,layout,bolts,size,grade,system,bolt length [mm],clamped thickness [mm],lot,bolt 1,direction,seen from,tools';
/** A joint list of so many joints on the demo's lots and tools. */
const list = (joints: number): string =>
  `${HEAD}\n${Array.from({ length: joints }, (_, at) => `J${at + 1},en1090-torque,2x4,8,M24,10.9,HV,95,${40 + (at % 30)},HV24-640,upper left,clockwise,outside,SK-B204`).join('\n')}\n`;

const medianOf = (times: readonly number[]) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
const RUNS = 9;
/** From end to end of the list: every row in sight is another in each frame. */
const FRAMES = 240;

/** The planner's pages in a browser: from an edit to its verdicts, scrolling a long list, the demo played, keys while it plays. */
export async function webPlannerBench(): Promise<void> {
  const shown = await showDemo();
  const { context, close } = await openBrowser({ viewport: { width: 1440, height: 900 } });
  try {
    const page = await context.newPage();
    const home = new URL('/office', shown.url).href;
    await page.goto(shown.url);
    await page.getByRole('heading', { name: 'Fix first' }).waitFor();
    await page.getByText('Kept in this browser').waitFor({ timeout: 60_000 });
    console.log(`web: 1,000 runs of the demo ${await played(page, home)} (target 3 s, a key answered in 200 ms)`);
    for (const joints of [1000, 10_000]) {
      await takeList(page, home, joints);
      console.log(
        `web: verdicts of ${joints} joints after an edit ${(await edited(page)).toFixed(0)} ms${joints === 1000 ? ' (target 300)' : ''}`,
      );
    }
    const cdp = await context.newCDPSession(page);
    await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
    const busy = async () => (await cdp.send('Performance.getMetrics')).metrics.find(({ name }) => name === 'TaskDuration')!.value;
    const before = await busy();
    const longest = await scrolled(page);
    const frame = (1000 * ((await busy()) - before)) / FRAMES;
    console.log(
      `web: longest task while 10,000 rows scroll ${longest.toFixed(0)} ms (target 50); the page’s own time a frame ${frame.toFixed(0)} ms`,
    );
  } finally {
    await close();
    await shown.stop();
  }
}

/** Puts the list in the place of the demo's, with its lots and tools. */
async function takeList(page: Page, home: string, joints: number): Promise<void> {
  await page.goto(home);
  const file = (name: string, text: string | Buffer) => ({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
  await page
    .getByLabel('Choose files')
    .setInputFiles([
      file('job.yaml', `${readFileSync('demo/job.yaml', 'utf8')}# ${joints}\n`),
      file('joints.csv', list(joints)),
      file('tools.yaml', readFileSync('demo/tools.yaml')),
      file('tests.yaml', readFileSync('demo/tests.yaml')),
      ...['SK-B204', 'SK-B117', 'SK-H031', 'SK-W552', 'SK-W210', 'SK-P019'].map((serial) =>
        file(`${serial}.csv`, readFileSync(`demo/charts/${serial}.csv`)),
      ),
    ]);
  await page.getByRole('heading', { name: 'Fix first' }).waitFor({ timeout: 60_000 });
}

/** From the key that ends an edit to the verdicts in the head of the page, ms. */
async function edited(page: Page): Promise<number> {
  await page.getByRole('link', { name: 'Define', exact: true }).click();
  const grid = page.getByRole('grid', { name: 'Joints' });
  await grid.focus();
  await page.keyboard.press('Control+Home');
  for (let column = 0; column < 9; column += 1) await page.keyboard.press('ArrowRight');
  const times: number[] = [];
  for (let run = 0; run <= RUNS; run += 1) {
    const wrong = run % 2 === 0;
    await page.keyboard.press('F2');
    await page.keyboard.press('Control+a');
    await page.keyboard.type(wrong ? 'lost' : 'HV24-640');
    const took = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          const input = document.querySelector<HTMLInputElement>('[role=gridcell] input')!;
          const shown = () => [...document.querySelectorAll('header a b')].map((one) => one.textContent).join(' ');
          const before = shown();
          const began = performance.now();
          const look = () => (shown() === before ? requestAnimationFrame(look) : resolve(performance.now() - began));
          input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', ctrlKey: true, bubbles: true }));
          look();
          setTimeout(() => resolve(Number.POSITIVE_INFINITY), 20_000);
        }),
    );
    if (run > 0) times.push(took);
    await page.getByText('Kept in this browser').waitFor();
  }
  return medianOf(times);
}

/** Longest task of the page while the list is scrolled from end to end, ms; 0: none above the 50 ms that browsers report. */
const scrolled = (page: Page): Promise<number> =>
  page.evaluate(async (frames) => {
    const box = document.querySelector<HTMLElement>('[role=grid]')!;
    let longest = 0;
    const watch = new PerformanceObserver((entries) => {
      for (const { duration } of entries.getEntries()) longest = Math.max(longest, duration);
    });
    watch.observe({ entryTypes: ['longtask'] });
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve));
    for (let top = 0; top < box.scrollHeight; top += box.scrollHeight / frames) {
      box.scrollTop = top;
      await frame();
    }
    await new Promise((resolve) => setTimeout(resolve, 300));
    watch.disconnect();
    return longest;
  }, FRAMES);

/** The demo played, and the slowest answer to a key meanwhile. */
async function played(page: Page, home: string): Promise<string> {
  const times: number[] = [];
  let slowest = 0;
  for (let run = 0; run < 5; run += 1) {
    await page.goto(new URL('/office/simulate', home).href);
    await page.getByRole('button', { name: 'Play' }).waitFor();
    await page.getByText('Kept in this browser').waitFor({ timeout: 60_000 });
    const began = performance.now();
    await page.getByRole('button', { name: 'Play' }).click();
    slowest = Math.max(
      slowest,
      await page.evaluate(async () => {
        let worst = 0;
        for (let key = 0; key < 10; key += 1) {
          const asked = performance.now();
          await new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve)));
          worst = Math.max(worst, performance.now() - asked);
          await new Promise((resolve) => setTimeout(resolve, 100));
        }
        return worst;
      }),
    );
    await page.getByText('from seed 1').waitFor({ timeout: 60_000 });
    times.push(performance.now() - began);
  }
  return `${(medianOf(times) / 1000).toFixed(1)} s, next frame after at most ${slowest.toFixed(0)} ms`;
}
