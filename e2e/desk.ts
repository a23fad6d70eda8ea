import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from 'playwright-core';

/** What a planner does at a desk, by the words on the pages. */
export const toPage = (page: Page, name: string): Promise<void> =>
  page.getByRole('navigation', { name: 'Pages of the office' }).getByRole('link', { name, exact: true }).click();

export const toPart = (page: Page, name: string): Promise<void> =>
  page.getByRole('navigation', { name: 'Parts of the job' }).getByRole('link', { name, exact: true }).click();

/** Signs in on the page of settings, which is open. */
export async function signIn(page: Page, name: string, password: string): Promise<void> {
  await page.getByLabel('Name', { exact: true }).fill(name);
  await page.getByLabel('Password', { exact: true }).fill(password);
  await page.getByRole('button', { name: 'Sign in', exact: true }).click();
  await page.getByText(`Signed in as ${name}`).waitFor();
}

/** Signs in as planner of a yard that has a job, and takes that onto this browser. */
export async function takeJob(page: Page, { url, output }: { readonly url: string; readonly output: () => string }): Promise<void> {
  await page.goto(`${url}/office/settings`);
  await signIn(page, 'planner', passwordOf(output()));
  await page.goto(`${url}/office`);
  await page.getByRole('button', { name: 'Take it onto this browser' }).click();
  await page.getByRole('button', { name: 'Work on it' }).waitFor();
}

/** Chooses the demo's folder by a field for files. */
export const chooseFolder = (field: Locator): Promise<void> =>
  field.setInputFiles(
    readdirSync('demo', { recursive: true, withFileTypes: true })
      .filter((one) => one.isFile() && !one.parentPath.includes('plan'))
      .map((one) => join(one.parentPath, one.name)),
  );

/** Chooses the demo's folder on the page of the start, and waits until all of it is planned and kept. */
export async function chooseDemo(page: Page): Promise<void> {
  await chooseFolder(page.getByLabel('Choose files'));
  await page.getByRole('heading', { name: 'Fix first' }).waitFor();
  await page.getByText('Kept in this browser').waitFor({ timeout: 60_000 });
}

/** Signs in, opens a job, takes it onto this browser, and names the planner who sits there. */
export async function openJob(page: Page, password: string, title: string, planner: string): Promise<void> {
  await toPage(page, 'Settings');
  await signIn(page, 'planner', password);
  await toPage(page, 'Start');
  await page.getByLabel('Name of a new job').fill(title);
  await page.getByRole('button', { name: 'Open a job' }).click();
  await page.getByRole('button', { name: 'Take it onto this browser' }).click();
  await page.getByRole('button', { name: 'Work on it' }).waitFor();
  await toPage(page, 'People');
  await page.getByLabel('Name of the person').fill(planner);
  await page.getByLabel('Role').selectOption('planner');
  await page.getByRole('button', { name: 'Enrol the person' }).click();
  await page.getByRole('button', { name: `I am ${planner}` }).waitFor();
}

export const passwordOf = (output: string): string => /password (\S+) and change it/.exec(output)![1]!;

/** A cell of the table by its row (from 1) and heading. */
export async function cellOf(page: Page, row: number, heading: string): Promise<string> {
  return page.evaluate(
    ([at, head]) => {
      const grid = document.querySelector('[role=grid]')!;
      const column = [...grid.querySelectorAll('[role=columnheader]')].findIndex((one) => one.firstChild?.textContent === head);
      return grid.querySelector(`[role=row][aria-rowindex="${Number(at) + 1}"]`)!.querySelectorAll('[role=gridcell]')[column]!.textContent!;
    },
    [String(row), heading] as const,
  );
}
