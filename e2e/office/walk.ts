import type { Locator, Page } from 'playwright-core';
import type { Params } from '../../packages/words/src/app/filler.ts';
import { type AppKey, type Language, loadTexts, speaker } from '../../packages/words/src/app/index.ts';
import { loadOfficeTexts, type OfficeKey, officeSay } from '../../packages/words/src/office/index.ts';
import { openBrowser } from '../browser.ts';
import { passwordOf } from '../desk.ts';
import { openWorkedYard } from '../worked-yard.ts';
import type { Yard } from '../yard.ts';

type Key = OfficeKey | AppKey;

/** A planner's browser on its way through the screens, and what its hand can do, in the words of its language. */
export interface Desk {
  readonly page: Page;
  readonly yard: Yard;
  readonly password: string;
  readonly say: (key: Key, params?: Params) => string;
  readonly to: (path: string) => Promise<void>;
  readonly press: (key: Key, params?: Params) => Promise<void>;
  readonly see: (key: Key, params?: Params) => Promise<void>;
  readonly field: (key: Key, params?: Params) => Locator;
  /** the draft in hand is planned to its last round, and kept */
  readonly planned: () => Promise<void>;
}

/** A screen, and how to get there from the one before it in the list. */
export interface OfficeScreen {
  readonly name: string;
  readonly go: (desk: Desk) => Promise<void>;
}

export interface Walker {
  readonly language: Language;
  readonly viewport: { readonly width: number; readonly height: number };
}

/** Walks a browser through all of the screens, in their order, on a yard of its own that is in the middle of its job; `visit` looks at each. */
export async function walkOffice(
  screens: readonly OfficeScreen[],
  { language, viewport }: Walker,
  visit: (desk: Desk, name: string) => Promise<void>,
): Promise<void> {
  const yard = await openWorkedYard();
  const { context, close } = await openBrowser({ viewport, bypassCSP: true, locale: language, reducedMotion: 'reduce' });
  context.setDefaultTimeout(30_000);
  const page = await context.newPage();
  const say = officeSay(language, await loadOfficeTexts(language), speaker(language, await loadTexts(language)).say);
  const found = (locator: Locator) => locator.filter({ visible: true }).first();
  const desk: Desk = {
    page,
    yard,
    password: passwordOf(yard.server.output()),
    say,
    to: async (path) => {
      await page.goto(`${yard.server.url}/office${path}`);
    },
    press: (key, params) => {
      const name = { name: say(key, params), exact: true };
      return found(page.locator('main').getByRole('button', name).or(page.locator('main').getByRole('link', name))).click();
    },
    see: (key, params) => found(page.getByText(say(key, params))).waitFor(),
    // the words of a list that is let down stand within its label
    field: (key, params) => {
      const name = say(key, params);
      return page.getByLabel(name, { exact: true }).or(page.getByRole('combobox', { name, exact: true }));
    },
    planned: async () => {
      await page.getByText(say('desk.kept')).waitFor({ timeout: 60_000 });
    },
  };
  try {
    for (const { name, go } of screens) {
      await go(desk).catch((error: unknown) => {
        throw new Error(`on the way to ${name} (${language}, ${viewport.width} px wide)`, { cause: error });
      });
      await visit(desk, name);
    }
  } finally {
    await close();
    await yard.close();
  }
}
