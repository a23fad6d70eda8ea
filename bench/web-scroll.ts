import type { Page } from 'playwright-core';

/** From end to end of the list: every row in sight is another in each frame. */
const FRAMES = 240;

export interface Scrolled {
  /** longest task of the page, ms of its own time: what others of this machine take meanwhile is not counted */
  readonly longest: number;
  /** the same by the clock */
  readonly clock: number;
  /** its own time a frame, ms */
  readonly frame: number;
}

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly tid: number;
  readonly pid: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** Scrolls a list of the page from end to end, a frame at a time, and says how long the page's main thread was busy. */
export async function scrolled(page: Page, list: string): Promise<Scrolled> {
  const cdp = await page.context().newCDPSession(page);
  const events: TraceEvent[] = [];
  cdp.on('Tracing.dataCollected', ({ value }) => void events.push(...(value as unknown as TraceEvent[])));
  await cdp.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: ['disabled-by-default-devtools.timeline', '__metadata'] },
  });
  await page.evaluate(
    async ([selector, frames]) => {
      const box = document.querySelector<HTMLElement>(selector)!;
      for (let top = 0; top < box.scrollHeight; top += box.scrollHeight / frames) {
        box.scrollTop = top;
        await new Promise((resolve) => requestAnimationFrame(resolve));
      }
    },
    [list, FRAMES] as const,
  );
  const ended = new Promise((resolve) => cdp.once('Tracing.tracingComplete', resolve));
  await cdp.send('Tracing.end');
  await ended;
  await cdp.detach();
  // several renderers may be told of: the one that scrolls is the busiest
  const tasks = events
    .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
    .map((main) => events.filter(({ name, pid, tid }) => name === 'RunTask' && pid === main.pid && tid === main.tid))
    .reduce((most, one) => (one.length > most.length ? one : most), []);
  if (tasks.length < FRAMES) throw new Error('the browser told of no tasks');
  const own = tasks.map(({ tdur = 0 }) => tdur / 1000);
  return {
    longest: Math.max(...own),
    clock: Math.max(...tasks.map(({ dur = 0 }) => dur / 1000)),
    frame: own.reduce((sum, one) => sum + one, 0) / FRAMES,
  };
}
