import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openBrowser } from '../e2e/browser.ts';
import { jobFolder } from '../packages/cli/src/job-folder.ts';
import { planJob } from '../packages/core/src/index.ts';
import { readJob } from '../packages/papers/src/index.ts';
import { idOf, issuePlan, utf8 } from '../packages/record/src/index.ts';
import { openStore } from '../packages/store/src/index.ts';
import { syncBook } from '../packages/sync/src/index.ts';
import { jobId, startServer, yardOnDisk } from '../torture/yard-on-disk.ts';

const JOB = jobId(9);
const JOINTS = 200;
const ENTRIES = 30;
const sixteen = (n: number) => Uint8Array.from({ length: 16 }, (_, at) => (n >>> (8 * (at % 4))) & 255);

/** The board of a job with 200 joints in the browser as it ships: from the news of an entry, over fetching and keeping it, to the next picture. */
export async function boardBench(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-board-'));
  const yard = await yardOnDisk({ folder: join(folder, 'data') }, 1, [JOB]);
  const store = await openStore({ folder: join(folder, 'data') });
  await store.access.put('server', 'book', JOB, { title: 'Two hundred joints' });
  await store.close();
  const { device, to } = yard.phones[0]!;
  const job = readJob(jobFolder('demo')).job!;
  const few = planJob(job);
  const [one] = few.joints.filter(({ tag }) => tag === 'FB-S1');
  const plan = { ...few, joints: Array.from({ length: JOINTS }, (_, at) => ({ ...one!, tag: `J-${at + 1}` })) };
  const issue = issuePlan(job, plan, [], { number: 'P-1', jointId: (tag) => idOf('joint', sixteen(Number(tag.slice(2)))) });
  for (const bytes of issue.attachments) await device.attach(JOB, bytes);
  const person = idOf('person', sixteen(999));
  await device.append(JOB, 'person-enrolled', { person, name: await device.attach(JOB, utf8('Ewa Lind')), roles: ['crew'] });
  for (const { kind, body } of issue.entries) await device.append(JOB, kind, body);
  const snug = (joint: number, bolt: number) =>
    device.append(JOB, 'bolt-tightened', { joint: idOf('joint', sixteen(joint)), bolt, step: 'snug', end: 'firm contact' }, { by: person });
  for (let joint = 1; joint <= JOINTS; joint += 2) for (let bolt = 1; bolt <= 4; bolt += 1) await snug(joint, bolt);
  const server = await startServer({}, ['--data', join(folder, 'data')]);
  await syncBook(device, JOB, to(server.url), yard.logKey);
  const browser = await openBrowser({ viewport: { width: 1440, height: 900 } });
  try {
    const page = await browser.context.newPage();
    await page.goto(`${server.url}/office/settings`);
    await page.getByLabel('Name', { exact: true }).fill('planner');
    await page.getByLabel('Password', { exact: true }).fill(/password (\S+) and change it/.exec(server.output())![1]!);
    await page.getByRole('button', { name: 'Sign in', exact: true }).click();
    await page.getByText('Signed in as planner').waitFor();
    await page.goto(`${server.url}/office`);
    await page.getByRole('button', { name: 'Take it onto this browser' }).click();
    await page.getByRole('button', { name: 'Work on it' }).waitFor();
    await page.goto(`${server.url}/office/watch`);
    await page.getByText('Live: moves as crews send').waitFor();
    await page.getByText('J-200', { exact: true }).waitFor();
    await page.waitForTimeout(2000);
    await page.evaluate(() => performance.clearMeasures());
    for (let n = 0; n < ENTRIES; n += 1) {
      await snug(2 * n + 2, 1);
      await syncBook(device, JOB, to(server.url), yard.logKey);
      await page.waitForFunction((seen) => performance.getEntriesByName('clampwright board').length > seen, n);
      await page.waitForTimeout(150);
    }
    const times = await page.evaluate(() => performance.getEntriesByName('clampwright board').map(({ duration }) => duration));
    const sorted = times.toSorted((a, b) => a - b);
    console.log(
      `board of ${JOINTS} joints, from the news of an entry to the next picture: median ${sorted[sorted.length >> 1]!.toFixed(0)} ms, slowest ${sorted.at(-1)!.toFixed(0)} ms of ${sorted.length} (wanted < 100 ms)`,
    );
  } finally {
    await browser.close();
    server.kill('SIGTERM');
    await server.ended;
    rmSync(folder, { recursive: true });
  }
}
