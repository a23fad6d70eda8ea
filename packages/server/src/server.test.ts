import { Hono } from 'hono';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { folderApp, type Serving, serveFolder } from './serve-folder.ts';

const pages = new Hono().get('*', (c) => (c.req.path.includes('.') ? c.notFound() : c.text('the app')));
let folder = new Uint8Array([1]);

describe('the app with a folder to open', () => {
  const app = folderApp({ pages, archive: () => folder });
  test('answers the app, and the folder as it lies there now', async () => {
    expect(await (await app.request('/office/open')).text()).toBe('the app');
    expect(new Uint8Array(await (await app.request('/folder.zip')).arrayBuffer())).toEqual(new Uint8Array([1]));
    folder = new Uint8Array([1, 2]);
    const again = await app.request('/folder.zip');
    expect(new Uint8Array(await again.arrayBuffer())).toEqual(folder);
    expect(again.headers.get('Cache-Control')).toBe('no-store');
  });
  test('tells nothing to elsewhere, and finds nothing that climbs', async () => {
    const { headers } = await app.request('/folder.zip');
    expect(headers.get('Content-Security-Policy')).toContain("default-src 'none'");
    expect(headers.get('Referrer-Policy')).toBe('no-referrer');
    for (const path of ['/package.json', '/fonts/../../package.json', '/%2e%2e/package.json'])
      expect({ path, status: (await app.request(path)).status }).toEqual({ path, status: 404 });
  });
});

describe('serving on a port', () => {
  let one: Serving;
  let two: Serving;
  beforeAll(async () => {
    one = await serveFolder({ pages, archive: () => folder, port: 48_700 });
    two = await serveFolder({ pages, archive: () => folder, port: 48_700 });
  });
  afterAll(async () => {
    await one.close();
    await two.close();
  });
  test('listens on this machine alone and takes the next port when one is busy', async () => {
    expect(one.url).toMatch(/^http:\/\/127\.0\.0\.1:/);
    expect(two.url).not.toBe(one.url);
    expect((await fetch(two.url)).status).toBe(200);
  });
});
