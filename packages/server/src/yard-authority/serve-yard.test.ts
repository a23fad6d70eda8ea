import { X509Certificate } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { NamesNotOurs, serveYard } from './serve-yard.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-yard-authority-'));
afterAll(() => rmSync(folder, { recursive: true }));
const start = (names: readonly string[], now = () => new Date()) =>
  serveYard({
    where: { folder: join(folder, 'data') },
    port: 0,
    trustPort: 0,
    host: '127.0.0.1',
    authority: join(folder, 'authority'),
    names,
    now,
  });

/** What a device sees that trusts the authority: a connection that Node's own check of name and chain lets through. */
const over = (url: string, ca: string, servername: string): Promise<{ status: number; body: string; until: string }> =>
  new Promise((resolve, reject) => {
    const { port, pathname } = new URL(url);
    const asked = request({ host: '127.0.0.1', port, path: pathname, ca, servername, agent: false }, (answer) => {
      const { valid_to: until } = (answer.socket as import('node:tls').TLSSocket).getPeerCertificate();
      let body = '';
      answer.on('data', (part) => {
        body += String(part);
      });
      answer.on('end', () => resolve({ status: answer.statusCode!, body, until }));
    });
    asked.on('error', reject);
    asked.end();
  });

test('serveYard() hands out an authority over plain HTTP, by which its own address is trusted', async () => {
  const yard = await start(['pier-box']);
  const page = await fetch(`http://127.0.0.1:${new URL(yard.trust[0]!).port}/`);
  expect(page.headers.get('content-security-policy')).toContain("default-src 'none'");
  const html = await page.text();
  expect(html).toContain(yard.fingerprint);
  expect(html).toContain('pier-box');
  const file = await fetch(`http://127.0.0.1:${new URL(yard.trust[0]!).port}/yard-authority.crt`);
  expect(file.headers.get('content-type')).toBe('application/x-x509-ca-cert');
  const authority = new X509Certificate(new Uint8Array(await file.arrayBuffer()));
  const trusted = await over(`${yard.url}trusted`, authority.toString(), 'pier-box');
  expect(trusted.status).toBe(200);
  expect(trusted.body).toContain('trusts the yard');
  expect((await over(`${yard.url}api/v1/health`, authority.toString(), 'pier-box')).status).toBe(200);
  await expect(over(yard.url, authority.toString(), 'elsewhere.test')).rejects.toThrow(/altnames/);
  // nothing but the page goes over plain HTTP
  expect((await fetch(`http://127.0.0.1:${new URL(yard.trust[0]!).port}/api/v1/health`)).status).toBe(404);
  await yard.close();
});

test('serveYard() refuses a name that its authority was not made for, and says which', async () => {
  await expect(start(['harbour.example'])).rejects.toThrow(NamesNotOurs);
  await expect(start(['pier-box', 'harbour.example'])).rejects.toThrow(/harbour\.example/);
});
