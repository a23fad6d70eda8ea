import { testPlan } from '@clampwright/papers/test-plan';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { createApp, type Serving, serve } from './index.ts';

const plan = testPlan();

describe('the plan server', () => {
  const app = createApp(plan, { font: new Uint8Array([1, 2, 3]) });
  test('answers every page, the data, style and letters', async () => {
    for (const path of [
      '/',
      '/cards',
      '/plan.json',
      '/style.css',
      '/cards.css',
      '/fonts/letters.woff2',
      `/joint/${encodeURIComponent(plan.joints[0]!.tag)}`,
    ]) {
      expect({ path, status: (await app.request(path)).status }).toEqual({ path, status: 200 });
    }
    expect(await (await app.request('/plan.json')).json()).toEqual(JSON.parse(JSON.stringify(plan)));
  });
  test('allows no script and no foreign address', async () => {
    const { headers } = await app.request('/');
    const policy = headers.get('Content-Security-Policy')!;
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe-|https?:|\*/);
    expect(headers.get('X-Content-Type-Options')).toBe('nosniff');
    expect(headers.get('Referrer-Policy')).toBe('no-referrer');
  });
  test('answers 404 for unknown joints and for paths that climb', async () => {
    for (const path of ['/joint/NOWHERE', '/fonts/../../package.json', '/%2e%2e/package.json', '/joint/..%2f..%2fetc']) {
      expect({ path, status: (await app.request(path)).status }).toEqual({ path, status: 404 });
    }
  });
});

describe('serving on a port', () => {
  let one: Serving;
  let two: Serving;
  beforeAll(async () => {
    one = await serve(plan, { port: 48_700 });
    two = await serve(plan, { port: 48_700 });
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
