import { bytesSource, hashOf, idOf, readNoteKey, readReport, sign, utf8, verifyHandover } from '@clampwright/record';
import { httpTransport, isPin, keepPin, memoryShelf, openDevice, syncBook } from '@clampwright/sync';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openEnrolment } from './devices.ts';
import { JOB, ORIGIN, type TestYard, testYard } from './test-yard.ts';

let yard: TestYard;
beforeAll(async () => {
  yard = await testYard();
});
afterAll(() => yard.close());
const PERSON = idOf('person', new Uint8Array(16).fill(3));
const post = (path: string, body: unknown, more: { as?: string; headers?: Record<string, string> } = {}) =>
  yard.ask(`/api/v1${path}`, { method: 'POST', body: JSON.stringify(body), ...more });
const codes = async (response: Response) => ((await response.json()) as { notices: { code: string }[] }).notices.map(({ code }) => code);

describe('signing in', () => {
  test('gives a cookie that scripts and other sites cannot use, and ends when asked', async () => {
    const cookie = await yard.signIn('crew');
    expect((await yard.ask('/api/v1/session', { as: cookie })).status).toBe(200);
    const signedIn = await post('/session', { name: 'crew 1', password: 'tide table 2026' });
    expect(signedIn.headers.get('set-cookie')).toMatch(/^clampwright_session=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/);
    expect((await yard.ask('/api/v1/session', { method: 'DELETE', as: cookie })).status).toBe(204);
    expect((await yard.ask('/api/v1/session', { as: cookie })).status).toBe(401);
  });
  test('runs out after idle time, sooner on a shared device', async () => {
    const planner = await yard.signIn('planner', 'all');
    await post('/accounts', { name: 'Hut', password: 'a long password', roles: ['crew'], books: [], shared: true }, { as: planner });
    const answer = await post('/session', { name: 'hut', password: 'a long password' });
    const cookie = answer.headers.get('set-cookie')!.split(';')[0]!;
    yard.clock.now = new Date(yard.clock.now.getTime() + 9 * 60_000);
    expect((await yard.ask('/api/v1/session', { as: cookie })).status).toBe(200);
    yard.clock.now = new Date(yard.clock.now.getTime() + 11 * 60_000);
    expect((await yard.ask('/api/v1/session', { as: cookie })).status).toBe(401);
    expect((await yard.ask('/api/v1/session', { as: planner })).status).toBe(200);
  });
  test('is refused after too many tries, for a name and from an address, and says how long to wait', async () => {
    const statuses: number[] = [];
    for (let i = 0; i < 12; i += 1) statuses.push((await post('/session', { name: 'crew 1', password: `guess ${i}` })).status);
    expect(statuses.slice(-2)).toEqual([429, 429]);
    const last = await post('/session', { name: 'crew 1', password: 'tide table 2026' });
    expect(Number(last.headers.get('retry-after'))).toBeGreaterThan(0);
    yard.clock.now = new Date(yard.clock.now.getTime() + 11 * 60_000);
    expect((await post('/session', { name: 'crew 1', password: 'tide table 2026' })).status).toBe(200);
  });
  test('never says whether the name or the password was wrong', async () => {
    const one = await (await post('/session', { name: 'crew 1', password: 'wrong password' })).text();
    const two = await (await post('/session', { name: 'nobody', password: 'wrong password' })).text();
    expect(one).toBe(two);
  });
  test('passwords are kept as argon2id', async () => {
    const records = (await yard.store.access.all()).filter(({ kind }) => kind === 'account');
    expect(records.every(({ value }) => (JSON.parse(value) as { password: string }).password.startsWith('$argon2id$'))).toBe(true);
  });
  test('a question from a page of another site changes nothing', async () => {
    const planner = await yard.signIn('planner', 'all');
    const answer = await post('/books', { title: 'x' }, { as: planner, headers: { origin: 'https://elsewhere.test' } });
    expect(await codes(answer)).toEqual(['from-another-site']);
    expect((await post('/books', { title: 'x' }, { as: planner, headers: { origin: ORIGIN } })).status).toBe(201);
  });
  test('the last planner stays', async () => {
    const fresh = await testYard();
    const planner = await fresh.signIn('planner', 'all');
    const answer = await fresh.ask('/api/v1/accounts/planner%201', { method: 'DELETE', as: planner });
    expect(answer.status).toBe(409);
    await fresh.close();
  });
});

describe('a device', () => {
  test('is enrolled by a code that holds once, for ten minutes, and for a key that signs it', async () => {
    const keys = (await yard.enrol(9)).keys;
    const ask = (code: string, over = code) =>
      post('/devices', {
        code,
        key: Buffer.from(keys.publicKey).toString('hex'),
        signature: Buffer.from(sign(utf8(`clampwright-enrol-1\n${over}`), keys)).toString('hex'),
      });
    const { code } = await openEnrolment(yard.store, 'phone', [JOB], yard.clock.now);
    expect(code).toMatch(/^[0-9A-Z]{5}-[0-9A-Z]{5}$/);
    expect((await ask(code, 'another')).status).toBe(400);
    expect(await codes(await ask(code))).toEqual(['code-not-valid']);
    const second = await openEnrolment(yard.store, 'phone', [JOB], yard.clock.now);
    expect((await ask(second.code.toLowerCase().replace('-', ' '))).status).toBe(201);
    expect((await ask(second.code)).status).toBe(400);
    const third = await openEnrolment(yard.store, 'phone', [JOB], yard.clock.now);
    yard.clock.now = new Date(yard.clock.now.getTime() + 601_000);
    expect((await ask(third.code)).status).toBe(400);
  });
  test('syncs over the interface, may not write for another, and is shut out when revoked', async () => {
    const { keys, token, device, client } = await yard.enrol(1);
    const other = await yard.enrol(2);
    const fetchApp = ((url: string, init: RequestInit) => yard.app.request(url, init)) as typeof fetch;
    const phone = openDevice({ shelf: memoryShelf(), keys, now: () => yard.clock.now, offsetMinutes: () => 0 });
    await phone.append(JOB, 'note-written', { text: 'fog' }, { by: PERSON });
    const photo = await phone.attach(JOB, utf8('a photo'));
    await phone.append(JOB, 'photo-taken', { photo, type: 'image/jpeg' });
    const transport = httpTransport({ server: ORIGIN, token, fetch: fetchApp });
    expect(await syncBook(phone, JOB, transport, yard.context.log.note)).toEqual({ pushed: 2, pulled: 2 });
    expect(await (await yard.ask(`/api/v1/books/${JOB}/attachments/${photo}`, { as: `Bearer ${token}` })).text()).toBe('a photo');

    await phone.append(JOB, 'note-written', { text: 'sun' });
    const asOther = httpTransport({ server: ORIGIN, token: other.token, fetch: fetchApp });
    expect((await syncBook(phone, JOB, asOther, yard.context.log.note)).stopped?.notices.map(({ code }) => code)).toEqual([
      'key-of-another-device',
    ]);

    const planner = await yard.signIn('planner', 'all');
    expect((await yard.ask(`/api/v1/devices/${device}`, { method: 'DELETE', as: planner })).status).toBe(204);
    expect((await client('checkpoint', { params: { job: JOB } })).kind).toBe('refused');
    expect((await syncBook(phone, JOB, transport, yard.context.log.note)).stopped?.notices.map(({ code }) => code)).toEqual([
      'not-signed-in',
    ]);
    expect(await phone.outbox(JOB)).toHaveLength(1);
  });
  test('checks PINs offline by what it was given', async () => {
    const planner = await yard.signIn('planner', 'all');
    await yard.ask(`/api/v1/pins/${PERSON}`, { method: 'PUT', as: planner, body: JSON.stringify({ pin: '4711' }) });
    const answer = await (await yard.enrol(3)).client('pins', {});
    if (answer.kind !== 'answered') throw new Error('no pins');
    const [check] = answer.value.pins;
    expect([await isPin('4711', check!), await isPin('4712', check!)]).toEqual([true, false]);
    expect((await keepPin(PERSON, '4711')).salt).not.toBe(check!.salt);
  });
});

describe('the books', () => {
  test('are handed over in a file that verifies, and prove places and growth', async () => {
    const inspector = await yard.signIn('inspector');
    const file = new Uint8Array(await (await yard.ask(`/api/v1/books/${JOB}/handover`, { as: inspector })).arrayBuffer());
    const note = (await (await yard.ask(`/api/v1/books/${JOB}/checkpoint`, { as: inspector })).json()) as { checkpoint: string };
    const result = await verifyHandover(bytesSource(file), { seen: note.checkpoint });
    expect(result).toMatchObject({ ok: true, value: { size: 2, seen: 2, attachments: 1, report: true } });
    expect(Buffer.from((await readReport(bytesSource(file)))!.subarray(0, 8)).toString()).toBe('%PDF-1.7');
    const proof = await (await yard.ask(`/api/v1/books/${JOB}/proofs/consistency?first=1&second=2`, { as: inspector })).json();
    expect((proof as { proof: string[] }).proof).toHaveLength(1);
    expect(readNoteKey('x').ok).toBe(false);
  });
  test('are reported alone, in the languages asked for, under the name of their organisation', async () => {
    const client = await yard.signIn('client');
    const answer = await yard.ask(`/api/v1/books/${JOB}/report/de-pl`, { as: client });
    expect([answer.status, answer.headers.get('content-type')]).toEqual([200, 'application/pdf']);
    const pdf = Buffer.from(await answer.arrayBuffer()).toString('latin1');
    expect(pdf).toMatch(/\/Lang \(de\)/);
    expect(pdf).toMatch(/<pdf:Producer>|pdfaid/);
    expect(pdf).toContain('Skerrow Sound tidal yard');
    for (const languages of ['fr', 'de-xx', 'constructor'])
      expect((await yard.ask(`/api/v1/books/${JOB}/report/${languages}`, { as: client })).status, languages).toBeGreaterThanOrEqual(400);
    const crew = await yard.signIn('crew');
    expect((await yard.ask(`/api/v1/books/${JOB}/report/en`, { as: crew })).status).toBe(403);
  });
  test('tell their state', async () => {
    const client = await yard.signIn('client');
    const state = (await (await yard.ask(`/api/v1/books/${JOB}/state`, { as: client })).json()) as {
      size: number;
      book: { notes: unknown[] };
    };
    expect(state).toMatchObject({ size: 2 });
    expect(state.book.notes).toHaveLength(1);
  });
  test('say at once that they have grown', async () => {
    const crew = await yard.signIn('crew');
    const abort = new AbortController();
    const reader = (await yard.ask(`/api/v1/books/${JOB}/events`, { as: crew, signal: abort.signal })).body!.getReader();
    const next = async () => new TextDecoder().decode((await reader.read()).value);
    expect(await next()).toBe(`event: size\ndata: {"job":"${JOB}","size":2}\n\n`);
    const { keys, token } = await yard.enrol(4);
    const phone = openDevice({ shelf: memoryShelf(), keys, now: () => yard.clock.now, offsetMinutes: () => 0 });
    await phone.append(JOB, 'note-written', { text: 'rain' });
    const told = next();
    await syncBook(
      phone,
      JOB,
      httpTransport({ server: ORIGIN, token, fetch: ((url: string, init: RequestInit) => yard.app.request(url, init)) as typeof fetch }),
      yard.context.log.note,
    );
    expect(await told).toContain('"size":3');
    await reader.cancel();
    abort.abort();
  });
  test('erase a file and keep its hash', async () => {
    const planner = await yard.signIn('planner', 'all');
    const path = `/api/v1/books/${JOB}/attachments/${hashOf(utf8('a photo'))}`;
    expect((await yard.ask(path, { method: 'DELETE', as: planner })).status).toBe(204);
    expect((await yard.ask(path, { as: planner })).status).toBe(404);
    const file = new Uint8Array(await (await yard.ask(`/api/v1/books/${JOB}/handover`, { as: planner })).arrayBuffer());
    expect(await verifyHandover(bytesSource(file))).toMatchObject({ ok: true, value: { missing: [hashOf(utf8('a photo'))] } });
  });
});

describe('a question that is not sound', () => {
  test.each([
    ['bytes that are not UTF-8', Buffer.from([0x7b, 0x22, 0xff, 0x22, 0x7d]), 'body-not-json'],
    ['no JSON', '{', 'body-not-json'],
    ['JSON without end in depth', `${'['.repeat(30_000)}${']'.repeat(30_000)}`, 'question-malformed'],
    ['a field nobody described', '{"name":"a","password":"b","role":"planner"}', 'question-malformed'],
    ['a body too large', `"${'x'.repeat(70_000)}"`, 'body-too-large'],
    ['an object that would change all objects', '{"__proto__":{"name":"a"},"password":"b"}', 'question-malformed'],
  ])('gets a clear answer: %s', async (_, body, code) => {
    const answer = await yard.ask('/api/v1/session', { method: 'POST', body });
    expect(await codes(answer)).toContain(code);
  });
  test('names every field that is wrong', async () => {
    const planner = await yard.signIn('planner', 'all');
    const answer = await post('/accounts', { name: '', password: 'short', roles: ['king'], books: 'some' }, { as: planner });
    expect((await codes(answer)).length).toBe(4);
  });
  test('about an address that is none', async () => {
    for (const path of ['/api/v1/nothing', '/api/v1/books/..%2f..%2fetc/state', '/etc/passwd', `/api/v1/books/${JOB.slice(0, -1)}/state`])
      expect((await yard.ask(path, { as: await yard.signIn('crew') })).status).toBe(404);
  });
});

test('the log of requests is one JSON object a line and holds no secret', async () => {
  const text = JSON.stringify(yard.lines);
  expect(yard.lines.every(({ time, level, event }) => time !== '' && level !== undefined && event !== '')).toBe(true);
  expect(text).not.toContain('tide table');
  expect(text).not.toMatch(/clampwright_session|Bearer/);
});
test('metrics count what was asked', async () => {
  const text = await (await yard.ask('/api/v1/metrics')).text();
  expect(text).toMatch(/^clampwright_requests_total\{endpoint="signIn",status="200"\} \d+$/m);
  expect(text).toMatch(/^clampwright_entries_received_total 3$/m);
});
