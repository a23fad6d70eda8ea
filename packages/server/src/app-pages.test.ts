import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterAll, expect, test } from 'vitest';
import { appPages } from './app-pages.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-pages-'));
const script = `export const torque = [${Array.from({ length: 500 }, (_, i) => 20 * i).join(',')}];`;
mkdirSync(join(folder, 'assets'));
writeFileSync(join(folder, 'index.html'), '<!doctype html><title>t</title>');
writeFileSync(join(folder, 'assets/a-1.js'), script);
writeFileSync(join(folder, 'mark.png'), new Uint8Array([137, 80, 78, 71]));
const app = appPages(folder);
afterAll(() => rmSync(folder, { recursive: true }));

test('a script goes out compressed to who can read that, and whole to who cannot', async () => {
  const small = await app.request('/assets/a-1.js', { headers: { 'Accept-Encoding': 'gzip, br' } });
  expect(small.headers.get('content-encoding')).toBe('gzip');
  expect(small.headers.get('vary')).toBe('Accept-Encoding');
  const sent = Buffer.from(await small.arrayBuffer());
  expect(sent.length).toBeLessThan(script.length / 2);
  expect(gunzipSync(sent).toString()).toBe(script);
  const whole = await app.request('/assets/a-1.js');
  expect(whole.headers.get('content-encoding')).toBe(null);
  expect(await whole.text()).toBe(script);
  // RFC 9110, 8.8.3: two forms of one page are two entities
  expect(small.headers.get('etag')).not.toBe(whole.headers.get('etag'));
});

test('what is there already is not sent again; a picture is sent as it is; a page finds its own way', async () => {
  const headers = { 'Accept-Encoding': 'gzip' };
  const first = await app.request('/office/plan', { headers });
  expect(first.headers.get('cache-control')).toBe('no-cache');
  const again = await app.request('/office/plan', { headers: { ...headers, 'If-None-Match': first.headers.get('etag')! } });
  expect(again.status).toBe(304);
  const picture = await app.request('/mark.png', { headers });
  expect(picture.headers.get('content-encoding')).toBe(null);
  expect((await app.request('/assets/gone.js', { headers })).status).toBe(404);
});
