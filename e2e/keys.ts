import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** More stops than any page has. */
const MOST_STOPS = 200;

export type Name = string | RegExp;

/** What has the focus: what it is called, whether it is in sight, and the ring that is drawn around it. */
const atFocus = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement as HTMLInputElement;
    const label = at.labels?.[0]?.cloneNode(true) as HTMLElement | undefined;
    for (const inside of label?.querySelectorAll('select') ?? []) inside.remove();
    // a field of files is chosen by its label
    const shown = at.type === 'file' ? at.labels![0]! : at;
    const { width, height, top, bottom } = shown.getBoundingClientRect();
    return {
      name: (at.getAttribute('aria-label') ?? label?.textContent ?? at.textContent ?? '').trim(),
      role: at.getAttribute('role') ?? (at.localName === 'input' ? at.type : at.localName),
      seen: width > 1 && height > 1 && bottom > 0 && top < innerHeight,
      ring: getComputedStyle(shown).outlineStyle,
    };
  });

/** Goes on with Tab until the focus is on what is called so, and is seen there. */
export async function tabTo(page: Page, name: Name, role?: string): Promise<void> {
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    await page.keyboard.press('Tab');
    const here = await atFocus(page);
    if ((role !== undefined && here.role !== role) || !(typeof name === 'string' ? here.name === name : name.test(here.name))) {
      // a table keeps Tab for its cells until Escape is pressed
      if (here.role === 'grid') await page.keyboard.press('Escape');
      continue;
    }
    expect(here, `the focus on ${name}`).toMatchObject({ seen: true });
    expect(here.ring, `the focus on ${name} is drawn`).not.toBe('none');
    return;
  }
  throw new Error(`Tab does not reach ${name}`);
}

export async function press(page: Page, name: Name, key = 'Enter'): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press(key);
}

export async function type(page: Page, name: Name, text: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.type(text);
}

/** Chooses in a list that is let down, with the arrows. */
export async function choose(page: Page, name: Name, option: Name): Promise<void> {
  await tabTo(page, name, 'select');
  const chosen = () => page.evaluate(() => (document.activeElement as HTMLSelectElement).selectedOptions[0]!.text);
  const fits = (text: string) => (typeof option === 'string' ? text === option : option.test(text));
  await page.keyboard.press('Home');
  for (let before = ''; !fits(await chosen()); ) {
    const now = await chosen();
    if (now === before) throw new Error(`${name} has no ${option}`);
    before = now;
    await page.keyboard.press('ArrowDown');
  }
}

/** Chooses files by a key where the page asks for them. */
export async function pickFiles(page: Page, name: Name, files: Parameters<Page['setInputFiles']>[1]): Promise<void> {
  const asked = page.waitForEvent('filechooser');
  await press(page, name);
  await (await asked).setFiles(files);
}
