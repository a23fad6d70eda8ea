import { spawnSync } from 'node:child_process';
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, truncateSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { testWriter } from '../packages/record/src/test-book.ts';
import { checkBook, openStore } from '../packages/store/src/index.ts';
import { syncBook } from '../packages/sync/src/index.ts';
import type { Count } from './count.ts';
import { randomBy } from './random.ts';
import { jobId, startServer, yardOnDisk } from './yard-on-disk.ts';

const JOB = jobId(1);

/** Power loss, as far as it can be shown without pulling a plug. */
export async function power(count: Count, cuts: number): Promise<void> {
  await cutAnywhere(count, cuts);
  await syncedBeforeAcknowledged(count);
}

/**
 * A copy of the data as a disk may hold it when the power goes: the write-ahead log cut at any byte. It has to open, hold every commit that
 * was whole before the cut, and nothing else.
 */
async function cutAnywhere(count: Count, cuts: number): Promise<void> {
  const random = randomBy(5);
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-power-'));
  try {
    const data = join(folder, 'data');
    const store = await openStore({ folder: data });
    const writer = testWriter(1, JOB);
    const wal = join(data, 'book.sqlite-wal');
    const commits: { bytes: number; size: number }[] = [{ bytes: statSync(wal).size, size: 0 }];
    for (let i = 0; i < 40; i += 1) {
      const entries = Array.from({ length: 1 + random.below(20) }, () => writer.write('note-written', { text: 'gust' }));
      await store.append(JOB, entries, [writer.head()]);
      commits.push({ bytes: statSync(wal).size, size: (await store.tail(JOB)).size });
    }
    const whole = join(folder, 'whole');
    mkdirSync(whole);
    for (const name of ['book.sqlite', 'book.sqlite-wal']) copyFileSync(join(data, name), join(whole, name));
    await store.close();
    const end = commits.at(-1)!.bytes;
    for (let i = 0; i < cuts; i += 1) {
      // half of the cuts fall near the end of a commit, where it matters
      const near = commits[random.below(commits.length)]!.bytes + random.below(5) - 2;
      const cut = Math.max(0, Math.min(end, i % 2 === 0 ? random.below(end) : near));
      const copy = join(folder, `cut-${i}`);
      mkdirSync(copy);
      copyFileSync(join(whole, 'book.sqlite'), join(copy, 'book.sqlite'));
      copyFileSync(join(whole, 'book.sqlite-wal'), join(copy, 'book.sqlite-wal'));
      truncateSync(join(copy, 'book.sqlite-wal'), cut);
      const kept = commits.filter(({ bytes }) => bytes <= cut).at(-1)?.size ?? 0;
      const opened = await openStore({ folder: copy });
      const { fault, size } = await checkBook(opened, JOB);
      count.check(`power cut at byte ${cut}`, fault === undefined && size === kept, fault ?? `${size} entries, not ${kept}`);
      await opened.close();
      rmSync(copy, { recursive: true });
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** System calls of the server while one batch is pushed: data has to be synced before the answer is written to the socket. */
async function syncedBeforeAcknowledged(count: Count): Promise<void> {
  if (spawnSync('strace', ['-V']).status !== 0) return count.left('trace of system calls', 'no strace here');
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-trace-'));
  const trace = join(folder, 'trace');
  try {
    const data = join(folder, 'data');
    const yard = await yardOnDisk({ folder: data }, 1, [JOB]);
    const { device, to } = yard.phones[0]!;
    const server = await startServer(
      {},
      ['--data', data],
      ['strace', '-D', '-s', '400', '-f', '-y', '-o', trace, '-e', 'trace=fsync,fdatasync,write,writev,sendto,pwrite64'],
    );
    for (let i = 0; i < 3; i += 1) {
      await device.append(JOB, 'note-written', { text: `gust ${i}` });
      await syncBook(device, JOB, to(server.url), yard.logKey);
    }
    server.kill('SIGTERM');
    await server.ended;
    await new Promise((resolve) => setTimeout(resolve, 200)); // the tracer ends after what it traced
    const lines = existsSync(trace) ? readFileSync(trace, 'utf8').split('\n') : [];
    const answers = lines.flatMap((line, at) =>
      /(writev?|sendto)\(\d+<(socket|TCP)/.test(line) && line.includes('HTTP/1.1 200') && line.includes('x-ndjson') ? [at] : [],
    );
    // pushes and pulls answer alike; every answer has to have every write to the log behind it synced
    const unsynced = answers.filter((at) => {
      const before = lines.slice(0, at);
      const wrote = before.findLastIndex((line) => line.includes('pwrite64') && line.includes('book.sqlite-wal'));
      const synced = before.findLastIndex((line) => /fdatasync|fsync/.test(line) && line.includes('book.sqlite-wal'));
      return wrote > synced;
    });
    const syncs = lines.filter((line) => /f(data)?sync\(\d+<[^>]*book\.sqlite-wal/.test(line)).length;
    count.check('answers were traced', answers.length >= 3, `${answers.length} answers in ${lines.length} lines`);
    count.check('every push was synced', syncs >= 3, `${syncs} syncs`);
    count.check('data was synced before it was acknowledged', unsynced.length === 0, `${unsynced.length} answers came first`);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
