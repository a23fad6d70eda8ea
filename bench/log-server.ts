import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { signHead } from '../packages/record/src/index.ts';
import { testWriter } from '../packages/record/src/test-book.ts';
import { syncBook, writeBatch } from '../packages/sync/src/index.ts';
import { jobId, startServer, yardOnDisk } from '../torture/yard-on-disk.ts';

const [RATE, QUEUE, CROWD] = [jobId(1), jobId(2), jobId(3)];
const rss = (pid: number) => Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;

/** The server as it ships, in a process of its own; clients in this one. */
export async function logServerBench(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-bench-'));
  const data = join(folder, 'data');
  const yard = await yardOnDisk({ folder: data }, 201, [RATE, QUEUE, CROWD]);
  const server = await startServer({}, ['--data', data]);
  await new Promise((resolve) => setTimeout(resolve, 1500));
  console.log(`server idle: ${rss(server.pid).toFixed(0)} MiB (wanted < 150 MiB)`);

  // batches are made beforehand: the server is measured, not the making
  const batches: { n: number; bytes: Uint8Array }[] = [];
  for (let n = 1; n <= 4; n += 1) {
    const writer = testWriter(n, RATE);
    for (let i = 0; i < 50; i += 1) {
      const entries = Array.from({ length: 100 }, (_, at) => writer.write('note-written', { text: `gust ${at}` }).bytes);
      batches.push({ n, bytes: await writeBatch({ heads: [writer.head()], entries }) });
    }
  }
  const began = performance.now();
  await Promise.all(
    [1, 2, 3, 4].map(async (n) => {
      const way = yard.phones[n - 1]!.to(server.url);
      for (const { bytes } of batches.filter((one) => one.n === n)) {
        const answer = await way.push(RATE, bytes);
        if (answer.kind !== 'answered') throw new Error(JSON.stringify(answer));
      }
    }),
  );
  console.log(
    `HTTP, batches of 100, four devices: ${Math.round((20_000 * 1000) / (performance.now() - began))} durable entries/s (wanted ≥ 5000)`,
  );

  const { device, to } = yard.phones[200]!;
  for (let i = 0; i < 10_000; i += 1) await device.append(QUEUE, 'note-written', { text: `gust ${i}` });
  const start = performance.now();
  const synced = await syncBook(device, QUEUE, to(server.url), yard.logKey);
  console.log(
    `10,000 queued entries of one device: ${((performance.now() - start) / 1000).toFixed(2)} s, ${synced.pushed} up, ${synced.pulled} back (wanted < 3 s)`,
  );

  const crowd = yard.phones.slice(0, 200);
  for (const phone of crowd) for (let i = 0; i < 20; i += 1) await phone.device.append(CROWD, 'note-written', { text: `gust ${i}` });
  const rush = performance.now();
  const came = await Promise.all(
    crowd.map(async (phone) => {
      const way = phone.to(server.url);
      const entries = (await phone.device.outbox(CROWD)).map(({ bytes }) => bytes);
      const last = (await phone.device.outbox(CROWD)).at(-1)!;
      const head = signHead({ job: CROWD, device: phone.device.id, sequence: last.entry.sequence, hash: last.hash }, phone.device.keys);
      const answer = await way.push(CROWD, await writeBatch({ heads: [head], entries }));
      return answer.kind === 'answered' ? answer.value.length : 0;
    }),
  );
  console.log(
    `200 devices bringing 20 entries each: ${((performance.now() - rush) / 1000).toFixed(2)} s, ${came.reduce((a, b) => a + b, 0)} taken (wanted ≤ 2 s)`,
  );
  server.kill('SIGTERM');
  await server.ended;
  rmSync(folder, { recursive: true });
}
