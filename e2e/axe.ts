import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

type Run = (options: { readonly rules: object }) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;

/** What axe objects to on the page as it stands; `more`: rules beside its usual ones. The browser must have been opened with `bypassCSP`. */
export async function violations(page: Page, more: readonly string[] = []): Promise<string[]> {
  await page.evaluate(source);
  return page.evaluate(async (rules) => {
    const { axe } = window as unknown as { axe: { run: Run } };
    const { violations: found } = await axe.run({ rules: Object.fromEntries(rules.map((rule) => [rule, { enabled: true }])) });
    return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' | ')}`);
  }, more);
}
