import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { jointCode } from '../../packages/papers/src/card-pdf/codes.ts';
import { type AppKey, type Language, loadTexts, type Speaker, speaker } from '../../packages/words/src/app/index.ts';
import { type OpenBrowser, openBrowser } from '../browser.ts';
import { ownProduct } from '../newer-version.ts';
import { squareVideo } from '../square-video.ts';
import { openYard, type Yard } from '../yard.ts';

/** A phone or tablet on its way through the screens, and what its hand can do. */
export interface Walk extends Pick<Speaker, 'say' | 'trade'> {
  /** another one after a flat battery */
  browser: OpenBrowser;
  page: Page;
  readonly yard: Yard;
  readonly language: Language;
  readonly viewport: { readonly width: number; readonly height: number };
  /** a folder for files, gone afterwards */
  readonly folder: string;
  /** presses what bears these words and no others */
  readonly press: (key: AppKey, params?: Parameters<Speaker['say']>[1]) => Promise<void>;
  readonly see: (key: AppKey, params?: Parameters<Speaker['say']>[1]) => Promise<void>;
  readonly to: (path: string) => Promise<void>;
  /** to a page of a joint, by its tag */
  readonly toJoint: (tag: string, page?: string) => Promise<void>;
}

/** A screen, and how to get there from the one before it in the list. */
export interface Screen {
  readonly name: string;
  readonly go: (walk: Walk) => Promise<void>;
}

export interface Walker {
  readonly language: Language;
  readonly viewport: Walk['viewport'];
  /** the browser lets scripts of a test in */
  readonly bypassCSP?: boolean;
}

/** Walks a device through all of the screens, in their order, on a yard of its own; `visit` looks at each. */
export async function walk(
  screens: readonly Screen[],
  { language, viewport, bypassCSP = false }: Walker,
  visit: (walk: Walk, name: string) => Promise<void>,
): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-walk-'));
  const video = join(folder, 'tag.y4m');
  squareVideo(video, jointCode({ title: 'another job', site: 'elsewhere' }, { tag: 'FB-S1' }), { comesAfter: 40 });
  const yard = await openYard(1, { product: ownProduct(folder) });
  const browser = await openBrowser(
    { viewport, bypassCSP, hasTouch: true, locale: LOCALE[language] ?? language, reducedMotion: 'reduce' },
    ['--use-fake-device-for-media-stream', `--use-file-for-fake-video-capture=${video}`],
  );
  browser.context.setDefaultTimeout(10_000);
  const { say, trade } = speaker(language, await loadTexts(language));
  const hand: Walk = {
    browser,
    page: await browser.context.newPage(),
    yard,
    language,
    viewport,
    folder,
    say,
    trade,
    press: async (key, params) => {
      const name = { name: say(key, params), exact: true };
      const { page } = hand;
      await page.getByRole('button', name).or(page.getByRole('link', name)).first().click();
    },
    see: (key, params) => hand.page.getByText(say(key, params)).first().waitFor(),
    to: async (path) => {
      await hand.page.goto(yard.server.url + path);
    },
    toJoint: (tag, page = '') => hand.to(`/joint/${yard.jointOf(tag)}${page}`),
  };
  try {
    for (const { name, go } of screens) {
      await go(hand).catch((error: unknown) => {
        throw new Error(`on the way to ${name} (${language}, ${viewport.width} px wide)`, { cause: error });
      });
      await visit(hand, name);
    }
  } finally {
    await hand.browser.close();
    await yard.close();
    rmSync(folder, { recursive: true, force: true });
  }
}
const LOCALE: Partial<Record<Language, string>> = { en: 'en-GB', de: 'de-DE' };
