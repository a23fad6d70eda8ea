import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { auditBook } from '../packages/server/src/index.ts';
import { openStore } from '../packages/store/src/index.ts';
import { syncBook } from '../packages/sync/src/index.ts';
import type { Count } from './count.ts';
import { type Random, randomBy } from './random.ts';
import { type EnrolledPhone, jobId, startServer, yardOnDisk } from './yard-on-disk.ts';

const PHONES = 4;
/** runs that write into one book before the next begins, so that reading it whole stays quick */
const RUNS_PER_BOOK = 20;

/**
 * The server is killed with SIGKILL at random moments while phones write and sync. Every entry that was acknowledged has to be in the book,
 * the book has to open, its chains and its tree have to fit, and phones have to go on with it.
 */
export async function kills(count: Count, runs: number, seed: number, until = Number.POSITIVE_INFINITY): Promise<void> {
  const began = Date.now();
  const random = randomBy(seed);
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-kills-'));
  const data = join(folder, 'data');
  const books = Array.from({ length: Math.ceil(runs / RUNS_PER_BOOK) }, (_, i) => jobId(i + 1));
  let acknowledged = 0;
  let done = 0;
  try {
    const yard = await yardOnDisk({ folder: data }, PHONES, books);
    const promised = new Map<string, Set<string>>(books.map((job) => [job, new Set()]));
    for (let run = 0; run < runs && Date.now() < until; run += 1) {
      const job = books[Math.floor(run / RUNS_PER_BOOK)]!;
      const server = await startServer({}, ['--data', data]);
      const over = new AbortController();
      const crews = yard.phones.map((phone) => work(phone, job, server.url, random, over.signal, promised.get(job)!, yard.logKey));
      // most often in the midst of work, now and then before any of it
      if (random.chance(0.85)) await grown(promised.get(job)!, 5000);
      await sleep(random.below(300));
      server.kill('SIGKILL');
      await server.ended;
      over.abort();
      const faults = (await Promise.all(crews)).flat();
      const store = await openStore({ folder: data });
      const { fault, size } = await auditBook(store, job);
      if (fault !== undefined) faults.push(fault);
      const there = new Set((await store.rows(job, 0, size)).map(({ receipt }) => receipt.entry as string));
      const lost = [...promised.get(job)!].filter((hash) => !there.has(hash));
      if (lost.length > 0) faults.push(`${lost.length} acknowledged entries are lost`);
      await store.close();
      count.check(`kill ${run + 1}`, faults.length === 0, [...new Set(faults)].join('; '));
      done += 1;
    }
    acknowledged = [...promised.values()].reduce((sum, { size }) => sum + size, 0);
    count.check('kills: entries were acknowledged', acknowledged > done);
  } finally {
    rmSync(folder, { recursive: true });
  }
  console.log(`kills: ${done} of ${runs}, ${acknowledged} entries acknowledged, ${((Date.now() - began) / 1000).toFixed(0)} s`);
}

const sleep = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** Resolves when more was acknowledged than at the call, or after a while. */
async function grown(promised: ReadonlySet<string>, atMostMs: number): Promise<void> {
  const { size } = promised;
  const until = Date.now() + atMostMs;
  while (promised.size === size && Date.now() < until) await sleep(5);
}

/** A phone that writes and syncs until the server is gone; keeps what was acknowledged to it. */
async function work(
  { device, to }: EnrolledPhone,
  job: string,
  url: string,
  random: Random,
  over: AbortSignal,
  promised: Set<string>,
  logKey: Parameters<typeof syncBook>[3],
): Promise<string[]> {
  const way = to(url);
  const faults: string[] = [];
  while (!over.aborted) {
    for (let i = random.below(30); i >= 0; i -= 1) await device.append(job, 'note-written', { text: `gust ${random.below(1000)}` });
    const synced = await syncBook(
      device,
      job,
      {
        ...way,
        push: async (...asked) => {
          const answer = await way.push(...asked);
          if (answer.kind === 'answered') for (const { entry } of answer.value) promised.add(entry);
          return answer;
        },
      },
      logKey,
    );
    if (synced.stopped && synced.stopped.why !== 'unreachable')
      faults.push(`${synced.stopped.why}: ${synced.stopped.notices.map(({ code }) => code).join()}`);
    if (synced.stopped) return faults;
  }
  return faults;
}
