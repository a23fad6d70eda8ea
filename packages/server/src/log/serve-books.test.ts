import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { request } from 'node:https';
import { connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { NeedsTls, type ServingBooks, serveBooks } from './serve-books.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-serve-'));
afterAll(() => rmSync(folder, { recursive: true }));
let count = 0;
const fresh = () => {
  count += 1;
  return { folder: join(folder, String(count)) };
};
const start = (more: Partial<Parameters<typeof serveBooks>[0]> = {}) => serveBooks({ where: fresh(), port: 0, ...more });
async function signedIn({ url, firstPassword }: ServingBooks): Promise<string> {
  const answer = await fetch(`${url}api/v1/session`, {
    method: 'POST',
    body: JSON.stringify({ name: 'planner', password: firstPassword }),
  });
  expect(answer.status).toBe(200);
  return answer.headers.get('set-cookie')!.split(';')[0]!;
}

describe('serveBooks()', () => {
  test('makes a planner at the first start of a store, and only then', async () => {
    const where = fresh();
    const first = await serveBooks({ where, port: 0 });
    const cookie = await signedIn(first);
    expect((await fetch(`${first.url}api/v1/books`, { headers: { cookie } })).status).toBe(200);
    await first.close();
    const second = await serveBooks({ where, port: 0 });
    expect(second.firstPassword).toBe(undefined);
    // a session outlives a restart
    expect((await fetch(`${second.url}api/v1/books`, { headers: { cookie } })).status).toBe(200);
    await second.close();
  });
  test('listens to this machine alone, and to others only with a certificate', async () => {
    await expect(start({ host: '0.0.0.0' })).rejects.toThrow(NeedsTls);
    const serving = await start();
    expect(serving.url).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    await serving.close();
  });
  test('refuses a body of 100 MB, says so, and lives', async () => {
    const serving = await start();
    const cookie = await signedIn(serving);
    const { port } = new URL(serving.url);
    const answer = await new Promise<string>((resolve, reject) => {
      const socket: Socket = connect(Number(port), '127.0.0.1', () => {
        socket.write(`POST /api/v1/accounts HTTP/1.1\r\nHost: x\r\nCookie: ${cookie}\r\nContent-Length: 104857600\r\n\r\n`);
        socket.write(Buffer.alloc(104_857_600, 'x'));
      });
      let text = '';
      socket.on('data', (data) => {
        text += String(data);
        if (text.includes('\r\n\r\n')) resolve(text);
      });
      socket.on('error', reject);
      socket.on('close', () => resolve(text));
    });
    expect(answer).toMatch(/^HTTP\/1\.1 413 /);
    expect((await fetch(`${serving.url}api/v1/health`)).status).toBe(200);
    await serving.close();
  });
  test('does not wait for clients that dawdle', async () => {
    const serving = await start();
    const { port } = new URL(serving.url);
    const slow = Array.from({ length: 50 }, () =>
      connect(Number(port), '127.0.0.1', function (this: Socket) {
        this.write('GET /api/v1/health HTTP/1.1\r\nHost:');
      }),
    );
    for (const one of slow) one.on('error', () => {});
    const began = performance.now();
    expect((await fetch(`${serving.url}api/v1/health`)).status).toBe(200);
    expect(performance.now() - began).toBeLessThan(2000);
    for (const one of slow) one.destroy();
    await serving.close();
  });
  test('ends live updates when it stops, and leaves nothing open', async () => {
    const serving = await start();
    const cookie = await signedIn(serving);
    const { books } = (await (await fetch(`${serving.url}api/v1/books`, { headers: { cookie } })).json()) as { books: { job: string }[] };
    const events = await fetch(`${serving.url}api/v1/books/${books[0]!.job}/events`, { headers: { cookie } });
    const reader = events.body!.getReader();
    expect(new TextDecoder().decode((await reader.read()).value)).toContain('"size":0');
    const began = performance.now();
    await serving.close();
    expect(performance.now() - began).toBeLessThan(5000);
  });
});

const openssl = spawnSync('openssl', [
  'req',
  '-x509',
  '-newkey',
  'ec',
  '-pkeyopt',
  'ec_paramgen_curve:P-256',
  '-nodes',
  '-days',
  '2',
  '-subj',
  '/CN=yard.test',
  '-keyout',
  join(folder, 'key.pem'),
  '-out',
  join(folder, 'cert.pem'),
]);
if (openssl.status !== 0) console.log('left out: serving over TLS (no openssl to make a certificate with)');
describe.skipIf(openssl.status !== 0)('with a certificate', () => {
  test('serves over TLS and marks cookies so', async () => {
    const [cert, key] = [readFileSync(join(folder, 'cert.pem'), 'utf8'), readFileSync(join(folder, 'key.pem'), 'utf8')];
    const serving = await start({ host: '0.0.0.0', tls: { cert, key } });
    const { port } = new URL(serving.url);
    const cookie = await new Promise<string | undefined>((resolve, reject) => {
      const asked = request(
        { host: '127.0.0.1', port, path: '/api/v1/session', method: 'POST', ca: cert, servername: 'yard.test' },
        (answer) => resolve(answer.headers['set-cookie']?.[0]),
      );
      asked.on('error', reject);
      asked.end(JSON.stringify({ name: 'planner', password: serving.firstPassword }));
    });
    expect(serving.url).toMatch(/^https:/);
    expect(cookie).toContain('; Secure');
    await serving.close();
  });
});
