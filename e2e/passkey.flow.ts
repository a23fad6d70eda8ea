import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningServer, startServer } from '../torture/yard-on-disk.ts';
import { type OpenBrowser, openBrowser } from './browser.ts';
import { passwordOf } from './desk.ts';

const folder = mkdtempSync(join(tmpdir(), 'clampwright-passkey-'));
let server: RunningServer;
let browser: OpenBrowser;
beforeAll(async () => {
  server = await startServer({}, ['--data', join(folder, 'data')]);
  browser = await openBrowser({ viewport: { width: 360, height: 740 } });
});
afterAll(async () => {
  await browser?.close();
  server?.kill('SIGTERM');
  await server?.ended;
  rmSync(folder, { recursive: true });
});

test('a person adds a passkey, signs out, and signs in with it: no name and no password', async () => {
  const page = await browser.context.newPage();
  const cdp = await browser.context.newCDPSession(page);
  await cdp.send('WebAuthn.enable');
  await cdp.send('WebAuthn.addVirtualAuthenticator', {
    options: {
      protocol: 'ctap2',
      transport: 'internal',
      hasResidentKey: true,
      hasUserVerification: true,
      isUserVerified: true,
      automaticPresenceSimulation: true,
    },
  });
  // a passkey is bound to a name, never to an address made of numbers
  await page.goto(server.url.replace('127.0.0.1', 'localhost'));
  const password = passwordOf(server.output());
  const outcome = await page.evaluate(async (secret) => {
    const ask = async (method: string, path: string, body?: unknown) => {
      const answer = await fetch(`/api/v1${path}`, { method, ...(body === undefined ? {} : { body: JSON.stringify(body) }) });
      return { status: answer.status, body: answer.status === 204 ? undefined : await answer.json() };
    };
    await ask('POST', '/session', { name: 'planner', password: secret });
    const offer = await ask('POST', '/session/passkeys/offer');
    const publicKey = PublicKeyCredential.parseCreationOptionsFromJSON(offer.body);
    const made = (await navigator.credentials.create({ publicKey })) as PublicKeyCredential;
    const added = await ask('POST', '/session/passkeys', { label: 'desk', response: made.toJSON() });
    const twice = await ask('POST', '/session/passkeys', { label: 'desk', response: made.toJSON() });
    await ask('DELETE', '/session');
    const out = await ask('GET', '/session');
    const question = await ask('POST', '/session/passkey/question');
    const shown = (await navigator.credentials.get({
      publicKey: PublicKeyCredential.parseRequestOptionsFromJSON(question.body),
    })) as PublicKeyCredential;
    const signedIn = await ask('POST', '/session/passkey', { response: shown.toJSON() });
    const replayed = await ask('POST', '/session/passkey', { response: shown.toJSON() });
    const list = await ask('GET', '/session/passkeys');
    return { added: added.status, twice: twice.status, out: out.status, signedIn, replayed: replayed.status, labels: list.body.passkeys };
  }, password);
  expect(outcome).toMatchObject({ added: 201, twice: 400, out: 401, signedIn: { status: 200, body: { name: 'planner' } }, replayed: 401 });
  expect(outcome.labels).toMatchObject([{ label: 'desk' }]);
});
