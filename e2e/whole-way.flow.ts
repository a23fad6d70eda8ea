import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { openJob, passwordOf, toPage } from './desk.ts';
import { hold, openJoint } from './phone.ts';
import { refusesAnotherByte, verifyAlone } from './stranger.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-way-'));
let server: RunningServer;
let office: OpenBrowser;
let phone: OpenBrowser;
let stranger: OpenBrowser;
beforeAll(async () => {
  server = await startServer({}, ['--data', join(folder, 'data')]);
  [office, phone, stranger] = await Promise.all([
    openBrowser({ viewport: { width: 1440, height: 900 } }),
    openBrowser({ viewport: { width: 360, height: 740 } }),
    openBrowser({ viewport: { width: 820, height: 1180 } }),
  ]);
}, 60_000);
afterAll(async () => {
  for (const one of [office, phone, stranger]) await one?.close();
  server?.kill('SIGTERM');
  await server?.ended;
  rmSync(folder, { recursive: true });
});

const TAG = 'FB-S1';

test('the whole way: list, plan, issue, tighten, inspect, hand over, verify elsewhere without network', async () => {
  const desk = await office.context.newPage();
  await desk.goto(`${server.url}/office`);
  await openJob(desk, passwordOf(server.output()), 'Footbridge', 'Ines Dahl');
  for (const [name, role] of [
    ['Ewa Lind', 'crew'],
    ['Tom Brae', 'inspector'],
  ] as const) {
    await desk.getByLabel('Name of the person').fill(name);
    await desk.getByLabel('Role').selectOption(role);
    await desk.getByRole('button', { name: 'Enrol the person' }).click();
    await desk.getByRole('button', { name: `Set the PIN of ${name}` }).waitFor();
    const person = desk.getByRole('listitem').filter({ hasText: name });
    await person.getByLabel('PIN, four digits or more').fill('2468');
    await person.getByRole('button', { name: `Set the PIN of ${name}` }).click();
    await person.getByText(`The PIN of ${name} is set.`).waitFor();
  }

  // the job folder, with its list cut to one joint; planned, frozen, issued
  await toPage(desk, 'Start');
  const list = readFileSync('demo/joints.csv', 'utf8').split('\n');
  // planned with a wrench that is too small: the plan says what to mend first
  const own = [list[0]!, ...list.filter((line) => line.startsWith(`${TAG},`)).map((line) => line.replace('SK-B204', 'SK-W210'))].join('\n');
  const files = readdirSync('demo', { recursive: true, withFileTypes: true })
    .filter((one) => one.isFile() && !['joints.csv', 'members.yaml', 'valves.yaml'].includes(one.name))
    .map((one) => ({ name: one.name, mimeType: '', buffer: readFileSync(join(one.parentPath, one.name)) }));
  await desk
    .getByLabel('Choose files')
    .setInputFiles([...files, { name: 'joints.csv', mimeType: 'text/csv', buffer: Buffer.from(`${own}\n`) }]);
  await desk.getByRole('heading', { name: 'Skerrow Sound, spring outage' }).waitFor();
  await toPage(desk, 'Plan');
  await desk.getByRole('heading', { name: 'Fix first' }).waitFor();
  await desk
    .getByText(/SK-W210 reaches/)
    .first()
    .waitFor();
  await desk.getByRole('button', { name: `Plan with SK-B204 (${TAG})` }).click();
  await desk.getByText(/SK-W210 reaches/).waitFor({ state: 'detached' });
  await toPage(desk, 'Issue');
  await desk.getByLabel('Number of this issue').waitFor();
  for (const name of await desk.getByLabel('Approved by').all()) await name.fill('Ines Dahl');
  await desk.getByLabel('Number of this issue').fill('P-1');
  await desk.getByRole('button', { name: 'Issue the plan' }).click();
  await desk.getByText(/^Plan P-1 is issued/).waitFor();

  // the crew
  await toPage(desk, 'Settings');
  await desk.getByLabel('What to call it').fill('phone 1');
  await desk.getByRole('button', { name: 'A code for a new device' }).click();
  const code = /Code (\S+),/.exec((await desk.getByText(/^Code /).textContent()) ?? '')![1]!;
  const steel = await phone.context.newPage();
  await steel.goto(`${server.url}/#join=${code}`);
  await steel.getByRole('button', { name: 'Join' }).click();
  await steel.getByText(TAG).first().waitFor();
  const named = async (name: string) => {
    await steel.goto(`${server.url}/who`);
    await steel.getByRole('button', { name }).click();
    await steel.getByLabel(`PIN of ${name}`).fill('2468');
    await steel.getByRole('button', { name: 'Confirm' }).click();
    await steel.getByText(`${name} holds this device`).waitFor();
  };
  // that the phone was enrolled is told by the office
  await desk.getByRole('listitem').filter({ hasText: 'phone 1' }).waitFor();
  await toPage(desk, 'Watch');
  const enrolled = () =>
    desk.evaluate(async () => {
      const { books } = (await (await fetch('/api/v1/books')).json()) as { books: { job: string }[] };
      const { job } = books.find((one) => one.job.startsWith('j-'))!;
      return (await (await fetch(`/api/v1/books/${job}/entries?from=0&limit=1000`)).text()).includes('"name":"phone 1"');
    });
  await expect.poll(enrolled, { timeout: 30_000 }).toBe(true);
  await steel.goto(server.url);
  await steel.getByText('Everything is sent.').waitFor();
  await named('Ewa Lind');
  await steel.getByRole('link', { name: /SK-B204/ }).click();
  await steel.getByLabel('At setting').fill('gear 2, step 9');
  await steel.getByLabel('Reading, N·m').fill('558');
  await steel.getByRole('button', { name: 'Passed' }).click();
  await openJoint(steel, TAG);
  await steel.getByRole('button', { name: 'So it is on the steel' }).click();
  for (const box of await steel.getByRole('checkbox').all()) await box.check();
  await steel.getByRole('button', { name: 'All of it is right' }).click();
  const firm = steel.getByRole('button', { name: 'In firm contact' });
  if (await firm.isVisible()) await firm.click();
  await steel.getByRole('link', { name: 'Go to the bolts' }).click();
  // eight bolts in three steps
  for (let pull = 1; pull <= 24; pull += 1) await hold(steel);
  await steel.getByText('Every bolt of every step is recorded.').waitFor();
  await steel.getByRole('link', { name: 'Sign as crew' }).click();
  await steel.getByRole('button', { name: 'Sign as crew' }).click();
  // recorded is what the page says is recorded
  await steel.getByLabel('Find a joint by its tag').waitFor();

  // the inspector, on the same device
  await named('Tom Brae');
  await openJoint(steel, TAG);
  await steel.getByRole('link', { name: 'Inspect' }).click();
  await steel.getByLabel('Serial number of your wrench').fill('IW-7');
  const sign = steel.getByRole('button', { name: 'Sign as inspector' });
  const passed = steel.getByRole('button', { name: 'Passed' });
  for (await passed.or(sign).first().waitFor(); !(await sign.isVisible()); ) {
    const bolt = await steel.getByRole('heading', { level: 2 }).textContent();
    await passed.click();
    await steel.getByRole('heading', { level: 2, name: bolt!, exact: true }).waitFor({ state: 'detached' });
  }
  await sign.click();
  await sign.waitFor({ state: 'detached' });
  await steel.goto(server.url);
  await steel.getByText('Everything is sent.').waitFor();

  // the board has followed; nothing is missing; the file is written
  await desk.getByText('1 of 1 joints complete').waitFor();
  await toPage(desk, 'Hand over');
  await desk.getByText('Every joint is tightened, inspected and signed, and nothing is open.').waitFor();
  await desk.getByRole('button', { name: 'Write the handover file' }).click();
  await desk.getByText(/^Verified here, every byte/).waitFor();
  const coming = desk.waitForEvent('download');
  await desk.getByRole('button', { name: 'Save the handover file' }).click();
  const file = join(folder, 'footbridge.handover');
  await (await coming).saveAs(file);

  // somebody else, in another browser, without network
  const page = await verifyAlone(stranger.context, server.url, file);
  await refusesAnotherByte(page, file, 'joint-signed');
  expect(await page.getByText('Do not rely on it').isVisible()).toBe(true);
}, 240_000);
