import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { jobFolder } from '../packages/cli/src/job-folder.ts';
import { planJob, type Tool } from '../packages/core/src/index.ts';
import { issuedValves, type OpenFile, readJob } from '../packages/papers/src/index.ts';
import { chartEntry, type Fold, idOf, issuePlan, openFold, type ReadTool, toolEntry, utf8 } from '../packages/record/src/index.ts';
import { atDesk } from '../packages/server/src/log/desk.ts';
import { openEnrolment } from '../packages/server/src/log/devices.ts';
import { SERVER, yardOf } from '../packages/server/src/log/log-key.ts';
import { openStore } from '../packages/store/src/index.ts';
import { keepPin, syncBook } from '../packages/sync/src/index.ts';
import { jobId, type RunningServer, startServer, yardOnDisk } from '../torture/yard-on-disk.ts';

const numbered = (n: number) => Uint8Array.from({ length: 16 }, (_, i) => (n >>> (8 * (i % 4))) & 255);
const sixteen = (n: number) => new Uint8Array(16).fill(n);
export const JOB = jobId(7);
export const CREW = { id: idOf('person', sixteen(21)), name: 'Ewa Lind', pin: '2468' };
export const MATE = { id: idOf('person', sixteen(22)), name: 'Tom Brae', pin: '1357' };

/** A yard with the demo job issued, two people with PINs, and codes for so many phones: the server as it ships, in its own process. */
export interface Yard {
  readonly server: RunningServer;
  readonly codes: readonly string[];
  readonly jointOf: (tag: string) => string;
  /** the planner's own device */
  readonly office: Awaited<ReturnType<typeof yardOnDisk>>['phones'][number];
  readonly sync: () => Promise<void>;
  /** everything that the server has, as the planner's device folds it */
  readonly book: () => Promise<Fold>;
  /** the server ends and another begins at the same address; `between`: what is done to the product that it serves */
  readonly restart: (between?: (product: string | undefined) => void) => Promise<void>;
  readonly close: () => Promise<void>;
}

const DEMO = jobFolder('demo');

export interface YardOptions {
  /** tools of which only the chart lies in the yard’s own book */
  readonly loaded?: readonly Tool[];
  /** whole tools in the yard’s own book */
  readonly equipment?: readonly ReadTool[];
  /** another job folder than the demo’s */
  readonly open?: OpenFile;
  /** where the product that serves it lies, where it is not this checkout */
  readonly product?: string;
  /** of the planner's own device */
  readonly now?: () => Date;
}

export async function openYard(
  phones: number,
  { loaded = [], equipment = [], open = DEMO, product, now = () => new Date() }: YardOptions = {},
): Promise<Yard> {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-yard-'));
  const where = { folder: join(folder, 'data') };
  const yard = await yardOnDisk(where, 1, [JOB], now);
  const store = await openStore(where);
  const codes: string[] = [];
  for (let n = 1; n <= phones; n += 1) codes.push((await openEnrolment(store, `phone ${n}`, [JOB], new Date())).code);
  for (const { id, pin } of [CREW, MATE]) await store.access.put(SERVER, 'pin', id, await keepPin(id, pin));
  await store.access.put(SERVER, 'book', JOB, { title: 'Skerrow Sound' });
  const { id: yardId } = await yardOf(store);
  await atDesk(
    store,
    yardId,
    () => new Date(),
    async (desk) => {
      for (const tool of loaded) {
        const sheet = await desk.attach(yardId, utf8(JSON.stringify(tool)));
        await desk.append(yardId, 'chart-loaded', { tool: tool.serial, certificate: tool.chart.certificate.number, sheet });
      }
      for (const { kind, body, attachments } of equipment.flatMap((one) => [toolEntry(one), chartEntry(one.tool)])) {
        for (const bytes of attachments) await desk.attach(yardId, bytes);
        await desk.append(yardId, kind, body);
      }
    },
  );
  await store.close();
  let server = await startServer({}, ['--data', where.folder], [], product);
  const office = yard.phones[0]!;
  const { device } = office;
  const planner = idOf('person', sixteen(20));
  await device.append(JOB, 'device-enrolled', {
    device: device.id,
    key: Buffer.from(device.keys.publicKey).toString('hex'),
    name: 'office',
  });
  for (const [person, name, roles] of [
    [planner, 'Ines Dahl', ['planner']],
    [CREW.id, CREW.name, ['crew', 'inspector']],
    [MATE.id, MATE.name, ['crew']],
  ] as const)
    await device.append(JOB, 'person-enrolled', { person, name: await device.attach(JOB, utf8(name)), roles: [...roles] });
  const job = readJob(open).job!;
  const plan = planJob(job);
  const { valves } = issuedValves(open, job.tools);
  const ids = new Map([...plan.joints, ...valves].map(({ tag }, at) => [tag, idOf('joint', numbered(40 + at))]));
  const issue = issuePlan(job, plan, valves, { number: 'P-1', jointId: (tag) => ids.get(tag)! });
  for (const bytes of issue.attachments) await device.attach(JOB, bytes);
  for (const { kind, body } of issue.entries) await device.append(JOB, kind, body, { by: planner });
  const sync = async () => {
    const synced = await syncBook(device, JOB, office.to(server.url), yard.logKey);
    if (synced.stopped) throw new Error(JSON.stringify(synced));
  };
  const book = async () => {
    await sync();
    const fold = openFold();
    for (const kept of await device.entries(JOB)) fold.add(kept);
    return fold;
  };
  await sync();
  return {
    get server() {
      return server;
    },
    codes,
    office,
    sync,
    book,
    jointOf: (tag) => ids.get(tag)!,
    restart: async (between) => {
      const { port } = new URL(server.url);
      server.kill('SIGTERM');
      await server.ended;
      between?.(product);
      server = await startServer({}, ['--data', where.folder, '--port', port], [], product);
    },
    close: async () => {
      server.kill('SIGTERM');
      await server.ended;
      rmSync(folder, { recursive: true });
    },
  };
}
