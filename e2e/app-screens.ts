import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startServer } from '../torture/yard-on-disk.ts';
import { openBrowser } from './browser.ts';
import { hold, openJoint, prepare } from './phone.ts';
import { shots } from './shots.ts';

const SIZES = { phone: { width: 360, height: 740 }, tablet: { width: 820, height: 1180 } } as const;

/** Pictures of the crew's screens, taken in practice: nothing in them is of a real yard. */
export async function appScreens(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-screens-'));
  const server = await startServer({}, ['--data', join(folder, 'data')]);
  try {
    for (const [size, viewport] of Object.entries(SIZES)) {
      const { context, close } = await openBrowser({ viewport });
      const page = await context.newPage();
      const shoot = (name: string) => shots(page, `${name}-${size}`);
      await page.goto(server.url);
      await page.getByRole('button', { name: 'Join' }).waitFor();
      await shoot('app-join');
      await page.goto(`${server.url}/verify`);
      await page.getByRole('button', { name: 'Verify' }).waitFor();
      await shoot('app-verify');
      await page.goto(server.url);
      await page.getByRole('button', { name: 'Practise without a job' }).click();
      await page.getByRole('button', { name: 'Begin practice' }).click();
      await page.getByText('FB-S1').first().waitFor();
      await shoot('app-today');
      await openJoint(page, 'FB-S1');
      await shoot('app-before');
      await page.getByRole('link', { name: 'Back' }).click();
      await prepare(page, 'FB-S1', ['SK-B204']);
      for (let bolt = 1; bolt <= 8; bolt += 1) await hold(page);
      await shoot('app-setting-changes');
      for (let bolt = 1; bolt <= 3; bolt += 1) await hold(page);
      await shoot('app-tighten');
      await page.getByRole('button', { name: 'Radio' }).click();
      await page.evaluate(() => window.scrollTo(0, 0));
      await shoot('app-radio');
      await page.getByRole('link', { name: 'Something else' }).click();
      await page.getByRole('heading', { name: /^What happened/ }).waitFor();
      await shoot('app-else');
      const bolts = page.url();
      await page.getByRole('link', { name: 'Take another tool' }).click();
      await page.getByRole('button', { name: /SK-B117/ }).click();
      await shoot('app-swap');
      await page.goto(server.url);
      await page.getByRole('link', { name: /GV-11/ }).click();
      await page.getByRole('button', { name: '+5' }).click();
      await shoot('app-valve');
      const valve = page.url();
      await page.goto(bolts.replace(/else.*/, 'inspect'));
      await page.getByRole('button', { name: 'Passed' }).waitFor();
      await shoot('app-inspect');
      // the same in German
      await page.evaluate(() => localStorage.setItem('clampwright settings', JSON.stringify({ language: 'de' })));
      for (const [name, url, text] of [
        ['today', server.url, 'FB-S1'],
        ['before', bolts.replace(/\/else.*/, ''), 'Prüfen'],
        ['tighten', bolts.replace(/else.*/, 'tighten'), 'Einstellung'],
        ['else', bolts, 'Akku'],
        ['inspect', bolts.replace(/else.*/, 'inspect'), 'Schlüssel'],
        ['valve', valve, 'Umdrehungen'],
        ['shift', `${server.url}/shift`, 'Schicht'],
        ['settings', `${server.url}/settings`, 'Einstellungen'],
      ] as const) {
        await page.goto(url);
        await page.getByText(text).first().waitFor();
        await shoot(`app-${name}-de`);
      }
      await close();
    }
  } finally {
    server.kill('SIGTERM');
    await server.ended;
    rmSync(folder, { recursive: true });
  }
}
