import { spawnSync } from 'node:child_process';
import { chownSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { TEST_JOB } from '../packages/record/src/test-book.ts';
import { testBook } from '../packages/record/src/test-handover.ts';
import { checkBook, openStore } from '../packages/store/src/index.ts';
import type { Count } from './count.ts';

/** A PostgreSQL of our own with a streaming replica: the replica reads the book, writes nothing, and holds it whole when the primary is gone. */
export async function replica(count: Count): Promise<void> {
  const { status, stdout } = spawnSync('pg_config', ['--bindir'], { encoding: 'utf8' });
  if (status !== 0) return count.left('a streaming replica', 'no PostgreSQL programs here');
  const programs = stdout.trim();
  // the database refuses to run as root
  const root = process.getuid?.() === 0;
  const owner = root ? spawnSync('id', ['-u', 'postgres'], { encoding: 'utf8' }) : undefined;
  if (owner && owner.status !== 0) return count.left('a streaming replica', 'root, and no user postgres');
  const run = (program: string, ...args: string[]) => {
    const command = [join(programs, program), ...args];
    const done = root
      ? spawnSync('runuser', ['-u', 'postgres', '--', ...command], { encoding: 'utf8', timeout: 60_000 })
      : spawnSync(command[0]!, command.slice(1), { encoding: 'utf8', timeout: 60_000 });
    if (done.status !== 0) throw new Error(`${program}: ${done.stderr || done.stdout}`);
  };
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-replica-'));
  if (owner) chownSync(folder, Number(owner.stdout), Number(owner.stdout));
  const [first, second] = [join(folder, 'primary'), join(folder, 'replica')];
  const [one, two] = [await freePort(), await freePort()];
  const start = (data: string, port: number) =>
    run(
      'pg_ctl',
      '-D',
      data,
      '-w',
      '-l',
      join(folder, `${port}.log`),
      '-o',
      `-p ${port} -k ${folder} -c listen_addresses=127.0.0.1`,
      'start',
    );
  const stop = (data: string) => run('pg_ctl', '-D', data, '-w', '-m', 'immediate', 'stop');
  const url = (port: number) => `postgres://postgres@127.0.0.1:${port}/postgres`;
  const running = new Set<string>();
  try {
    run('initdb', '-D', first, '-U', 'postgres', '-A', 'trust', '--no-sync');
    start(first, one);
    running.add(first);
    const book = testBook(3);
    const primary = await openStore({ url: url(one) });
    await primary.append(TEST_JOB, book.entries.slice(0, 50), []);
    run('pg_basebackup', '-d', `host=127.0.0.1 port=${one} user=postgres`, '-D', second, '-R', '-X', 'stream', '--no-sync');
    start(second, two);
    running.add(second);
    for (let at = 50; at < book.entries.length; at += 10)
      await primary.append(TEST_JOB, book.entries.slice(at, at + 10), at === 50 ? book.heads : []);
    const reader = await openStore({ url: url(two) }, { mode: 'reader' });
    const until = Date.now() + 20_000;
    while ((await reader.tail(TEST_JOB)).size < book.entries.length && Date.now() < until)
      await new Promise((resolve) => setTimeout(resolve, 50));
    const read = await checkBook(reader, TEST_JOB);
    count.check(
      'a replica reads the whole book',
      read.fault === undefined && read.size === book.entries.length,
      read.fault ?? String(read.size),
    );
    count.check(
      'a replica takes nothing',
      await reader.append(TEST_JOB, [], book.heads).then(
        () => false,
        () => true,
      ),
    );
    await primary.close();
    stop(first);
    running.delete(first);
    count.check('with the primary gone the replica still reads', (await checkBook(reader, TEST_JOB)).fault === undefined);
    await reader.close();
    run('pg_ctl', '-D', second, '-w', 'promote');
    const promoted = await openStore({ url: url(two) });
    const [again] = await promoted.append(TEST_JOB, book.entries.slice(-1), []);
    count.check('a promoted replica goes on as the server’s store', again?.index === book.entries.length - 1);
    await promoted.close();
  } catch (error) {
    count.check('a streaming replica', false, (error as Error).message);
  } finally {
    for (const data of running) stop(data);
    rmSync(folder, { recursive: true, force: true });
  }
}

const freePort = () =>
  new Promise<number>((resolve) => {
    const server = createServer().listen(0, '127.0.0.1', () => {
      const { port } = server.address() as { port: number };
      server.close(() => resolve(port));
    });
  });
