import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { connect, createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { auditBook } from '../packages/server/src/index.ts';
import { openStore } from '../packages/store/src/index.ts';
import { testDatabase } from '../packages/store/src/test-database.ts';
import { syncBook } from '../packages/sync/src/index.ts';
import type { Count } from './count.ts';
import { jobId, startServer, yardOnDisk } from './yard-on-disk.ts';

const JOB = jobId(1);

/** Disks that are full or read-only, a database that goes and comes back, and clients that mean ill: a clear answer, and the server lives. */
export async function faults(count: Count): Promise<void> {
  const began = Date.now();
  const folder = mkdtempSync(join(tmpdir(), 'clampwright-faults-'));
  try {
    await Promise.all([fullDisk(count, folder), readOnlyDisk(count, folder), databaseGone(count), illClients(count, folder)]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
  console.log(`faults: ${((Date.now() - began) / 1000).toFixed(0)} s`);
}

const mount = (...args: string[]) => spawnSync('mount', args).status === 0;
const unmount = (at: string) => spawnSync('umount', [at]);
const health = async (url: string) => (await fetch(`${url}/api/v1/health`)).status;

async function fullDisk(count: Count, folder: string): Promise<void> {
  const disk = join(folder, 'full');
  mkdirSync(disk);
  if (!mount('-t', 'tmpfs', '-o', 'size=2m', 'tmpfs', disk)) return count.left('full disk', 'no right to mount a small one');
  try {
    const data = join(disk, 'data');
    const yard = await yardOnDisk({ folder: data }, 1, [JOB]);
    const { device, to } = yard.phones[0]!;
    const server = await startServer({}, ['--data', data]);
    let stopped: string | undefined;
    for (let round = 0; round < 60 && stopped === undefined; round += 1) {
      for (let i = 0; i < 100; i += 1) await device.append(JOB, 'note-written', { text: `gust ${i} ${'x'.repeat(300)}` });
      stopped = (await syncBook(device, JOB, to(server.url), yard.logKey)).stopped?.why;
    }
    count.check('a full disk is said to be unreachable, not refused', stopped === 'unreachable', stopped ?? 'it never filled');
    const answer = await fetch(`${server.url}/api/v1/session`, {
      method: 'POST',
      body: JSON.stringify({ name: 'planner', password: 'x' }),
    });
    count.check('a server on a full disk answers', answer.status < 500 || answer.status === 503, String(answer.status));
    const waiting = (await device.outbox(JOB)).length;
    count.check('what was not acknowledged stays with the device', waiting > 0);
    count.check('the disk was given room', mount('-o', 'remount,size=32m', disk));
    const synced = await syncBook(device, JOB, to(server.url), yard.logKey);
    count.check(
      'the server goes on when there is room again',
      synced.stopped === undefined && (await device.outbox(JOB)).length === 0,
      synced.stopped?.why,
    );
    server.kill('SIGTERM');
    count.check('it stops in good order', (await server.ended) === 0);
    const store = await openStore({ folder: data });
    const { fault, size } = await auditBook(store, JOB);
    count.check('nothing is lost and everything fits', fault === undefined && size === (await device.chain(JOB)).next, fault ?? `${size}`);
    await store.close();
  } finally {
    unmount(disk);
  }
}

async function readOnlyDisk(count: Count, folder: string): Promise<void> {
  const disk = join(folder, 'read-only');
  mkdirSync(disk);
  if (!mount('-t', 'tmpfs', '-o', 'size=8m', 'tmpfs', disk)) return count.left('read-only disk', 'no right to mount one');
  try {
    const data = join(disk, 'data');
    await yardOnDisk({ folder: data }, 1, [JOB]);
    count.check('the disk was made read-only', mount('-o', 'remount,ro', disk));
    const { status, stderr } = spawnSync(process.execPath, ['packages/cli/bin/clampwright.mjs', 'serve', '--port', '0', '--data', data], {
      encoding: 'utf8',
      timeout: 20_000,
    });
    count.check(
      'a server on a read-only disk says so and does not start',
      status === 2 && /cannot be written|read-?only/i.test(stderr),
      `${status} ${stderr.slice(0, 300)}`,
    );
    const audit = spawnSync(process.execPath, ['packages/cli/bin/clampwright.mjs', 'audit', '--data', data], {
      encoding: 'utf8',
      timeout: 20_000,
    });
    count.check('its books can still be read', audit.status === 0, audit.stderr.slice(0, 300));
  } finally {
    unmount(disk);
  }
}

/** A door before the database that can be shut: connections end, and new ones find nobody. */
async function doorBefore(url: string) {
  const { hostname, port } = new URL(url);
  const open = new Set<Socket>();
  const door = createServer((socket) => {
    const inside = connect(Number(port || 5432), hostname);
    for (const one of [socket, inside]) {
      open.add(one);
      one.on('error', () => {});
      one.on('close', () => open.delete(one));
    }
    socket.pipe(inside).pipe(socket);
  });
  const listen = (at: number) => new Promise<void>((resolve) => door.listen(at, '127.0.0.1', resolve));
  await listen(0);
  const at = (door.address() as { port: number }).port;
  const through = new URL(url);
  through.host = `127.0.0.1:${at}`;
  return {
    url: through.href,
    shut: () =>
      new Promise<void>((resolve) => {
        door.close(() => resolve());
        for (const one of open) one.destroy();
      }),
    open: () => listen(at),
  };
}

async function databaseGone(count: Count): Promise<void> {
  const database = await testDatabase();
  if ('missing' in database) return count.left('a database that goes and comes back', database.missing);
  const door = await doorBefore(database.url);
  try {
    const yard = await yardOnDisk({ url: door.url }, 1, [JOB]);
    const { device, to } = yard.phones[0]!;
    const server = await startServer({ DATABASE_URL: door.url }, []);
    const write = async () => {
      for (let i = 0; i < 20; i += 1) await device.append(JOB, 'note-written', { text: `gust ${i}` });
      return (await syncBook(device, JOB, to(server.url), yard.logKey)).stopped?.why;
    };
    count.check('a server on PostgreSQL takes entries', (await write()) === undefined);
    await door.shut();
    count.check('without its database it says so', (await health(server.url)) === 503);
    count.check('and takes nothing', (await write()) === 'unreachable');
    await door.open();
    count.check('with the database back it goes on', (await write()) === undefined);
    count.check('and is well', (await health(server.url)) === 200);
    server.kill('SIGTERM');
    count.check('it stops in good order after that', (await server.ended) === 0);
    const store = await openStore({ url: database.url });
    const { fault, size } = await auditBook(store, JOB);
    count.check('nothing is lost with the database gone and back', fault === undefined && size === 60, fault ?? `${size}`);
    await store.close();
  } finally {
    await door.shut();
    await database.drop();
  }
}

const raw = (port: number, send: (socket: Socket) => void, waitMs = 12_000): Promise<string> =>
  new Promise((resolve) => {
    let text = '';
    const socket = connect(port, '127.0.0.1', () => send(socket));
    const end = () => {
      socket.destroy();
      resolve(text);
    };
    setTimeout(end, waitMs).unref();
    socket.on('data', (data) => {
      text += String(data);
      if (text.includes('\r\n\r\n')) end();
    });
    socket.on('error', end);
    socket.on('close', end);
  });

async function illClients(count: Count, folder: string): Promise<void> {
  const data = join(folder, 'ill');
  const yard = await yardOnDisk({ folder: data }, 1, [JOB]);
  const { device, to } = yard.phones[0]!;
  const server = await startServer({}, ['--data', data]);
  const port = Number(new URL(server.url).port);
  const post = (path: string, body: BodyInit, headers: Record<string, string> = {}) =>
    fetch(`${server.url}/api/v1${path}`, { method: 'POST', body, headers });
  try {
    const large = await raw(port, (socket) => {
      socket.write('POST /api/v1/session HTTP/1.1\r\nHost: x\r\nContent-Length: 104857600\r\n\r\n');
      for (let i = 0; i < 100; i += 1) socket.write(Buffer.alloc(1 << 20, 'x'));
    });
    count.check('a body of 100 MB is refused', large.startsWith('HTTP/1.1 413'), large.slice(0, 80));
    const chunked = await raw(port, (socket) => {
      socket.write('POST /api/v1/session HTTP/1.1\r\nHost: x\r\nTransfer-Encoding: chunked\r\n\r\n');
      for (let i = 0; i < 100; i += 1) socket.write(`${(1 << 20).toString(16)}\r\n${'x'.repeat(1 << 20)}\r\n`);
      socket.write('0\r\n\r\n');
    });
    count.check('one that does not say how long it is, too', chunked.startsWith('HTTP/1.1 413'), chunked.slice(0, 80));
    const deep = `${'['.repeat(30_000)}${']'.repeat(30_000)}`;
    count.check('JSON without end in depth is refused', (await post('/session', deep)).status === 400);
    count.check(
      'bytes that are not UTF-8 are refused',
      (await post('/session', Buffer.from([0x7b, 0x22, 0xff, 0x22, 0x7d]))).status === 400,
    );
    count.check(
      'no HTTP at all is refused',
      (await raw(port, (socket) => socket.write('\x16\x03\x01\x02\x00\x01\x00'))).startsWith('HTTP/1.1 400'),
    );
    count.check('a path without end is refused', [404, 431].includes((await fetch(`${server.url}/api/v1/${'a'.repeat(12_000)}`)).status));

    const slow = Array.from({ length: 200 }, () =>
      connect(port, '127.0.0.1', function (this: Socket) {
        this.write('POST /api/v1/session HTTP/1.1\r\nHost: x\r\nContent-Le');
      }),
    );
    const gone = slow.map((one) => new Promise<void>((resolve) => one.on('close', () => resolve()).on('error', () => {})));
    const dribble = setInterval(() => {
      for (const one of slow) if (!one.destroyed) one.write('x');
    }, 500);
    const before = performance.now();
    count.check('two hundred slow clients hold nobody up', (await health(server.url)) === 200 && performance.now() - before < 5000);
    await device.append(JOB, 'note-written', { text: 'through the crowd' });
    count.check('and entries still come in', (await syncBook(device, JOB, to(server.url), yard.logKey)).stopped === undefined);
    const letGo = await Promise.race([
      Promise.all(gone).then(() => true),
      new Promise<boolean>((resolve) => setTimeout(resolve, 20_000, false)),
    ]);
    clearInterval(dribble);
    for (const one of slow) one.destroy();
    count.check('slow clients are let go', letGo);
    count.check('the server is the same one', server.pid > 0 && (await health(server.url)) === 200);
    server.kill('SIGTERM');
    count.check('it stops in good order after all that', (await server.ended) === 0);
  } finally {
    server.kill('SIGKILL');
  }
}
