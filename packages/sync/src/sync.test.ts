import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type KeyPair, openFold, signHead } from '@clampwright/record';
import { jointId, TEST_JOB, testKeys, testWriter } from '@clampwright/record/test-book';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { openStore, type Store } from '../../store/src/index.ts';
import { writeBatch } from './batch.ts';
import { openDevice } from './device.ts';
import { memoryShelf } from './shelf.ts';
import { startOver, syncBook } from './sync-book.ts';
import { deviceKeys, directTransport, noteKeyOf } from './test-server.ts';
import type { Transport } from './transport.ts';

const JOB = TEST_JOB;
const LOG_KEYS = testKeys(99);
const LOG_KEY = noteKeyOf(LOG_KEYS, 'skerrow');
const [ONE, TWO] = [testKeys(1), testKeys(2)];
const folder = mkdtempSync(join(tmpdir(), 'clampwright-sync-'));
let count = 0;
let store: Store;
let server: Transport;
const open: Store[] = [];
async function newServer(): Promise<[Store, Transport]> {
  count += 1;
  const fresh = await openStore({ folder: join(folder, String(count)) });
  open.push(fresh);
  return [fresh, directTransport(fresh, LOG_KEYS, 'skerrow', deviceKeys(ONE, TWO))];
}
beforeEach(async () => {
  [store, server] = await newServer();
});
afterAll(async () => {
  for (const one of open) await one.close();
  rmSync(folder, { recursive: true });
});

const now = () => new Date('2026-11-25T08:00:00.000Z');
const phone = (keys: KeyPair, shelf = memoryShelf()) => openDevice({ shelf, keys, now, offsetMinutes: () => 0 });
const sync = (device: ReturnType<typeof phone>, transport = server) => syncBook(device, JOB, transport, LOG_KEY);
const note = (device: ReturnType<typeof phone>, text: string) => device.append(JOB, 'note-written', { text });
const texts = async (device: ReturnType<typeof phone>) => (await device.entries(JOB)).map(({ entry }) => String(entry.body.text));
const codes = (synced: Awaited<ReturnType<typeof sync>>) => synced.stopped?.notices.map(({ code }) => code);

describe('a device and a server', () => {
  test('come to the same book, and another device to it after them', async () => {
    const [one, two] = [phone(ONE), phone(TWO)];
    await note(one, 'a');
    await note(one, 'b');
    await note(two, 'c');
    expect(await sync(one)).toEqual({ pushed: 2, pulled: 2 });
    expect(await one.outbox(JOB)).toEqual([]);
    expect(await sync(two)).toEqual({ pushed: 1, pulled: 3 });
    expect(await texts(two)).toEqual(['a', 'b', 'c']);
    expect(await sync(one)).toEqual({ pushed: 0, pulled: 1 });
    const after = await note(one, 'd');
    const [, , c] = await two.entries(JOB);
    expect(after.entry).toMatchObject({ counter: 3, seen: [c!.hash], sequence: 2 });
  });
  test('lose nothing when answers are lost, cut short, or come twice', async () => {
    const one = phone(ONE);
    for (let i = 0; i < 7; i += 1) await note(one, String(i));
    let fails = 4;
    const flaky: Transport = {
      ...server,
      push: async (job, batch) => {
        await server.push(job, batch);
        fails -= 1;
        return fails > 1 ? { kind: 'unreachable', why: 'tunnel' } : server.push(job, batch);
      },
      pull: async (...asked) => {
        fails -= 1;
        const answer = await server.pull(...asked);
        return fails === 0 && answer.kind === 'answered' ? { kind: 'answered', value: answer.value.slice(0, -9) } : answer;
      },
    };
    for (let tries = 0; tries < 8; tries += 1) await sync(one, flaky);
    expect(await one.outbox(JOB)).toEqual([]);
    expect(await texts(one)).toEqual(['0', '1', '2', '3', '4', '5', '6']);
    expect((await store.tail(JOB)).size).toBe(7);
  });
  test('sign at once what is a sign-off, and carry that signature', async () => {
    const one = phone(ONE);
    await one.append(JOB, 'joint-signed', { joint: jointId(1), as: 'crew' });
    await note(one, 'after');
    await sync(one);
    expect((await store.heads(JOB)).map(({ sequence }) => sequence)).toEqual([0, 1]);
  });
  test('send more than one batch, and go on where they stopped', async () => {
    const one = phone(ONE);
    for (let i = 0; i < 1200; i += 1) await note(one, String(i));
    let pushes = 0;
    const broken: Transport = {
      ...server,
      push: async (...all) => {
        pushes += 1;
        return pushes === 2 ? { kind: 'unreachable', why: 'lift' } : server.push(...all);
      },
    };
    expect((await sync(one, broken)).stopped?.why).toBe('unreachable');
    expect((await store.tail(JOB)).size).toBe(500);
    expect(await sync(one, broken)).toEqual({ pushed: 700, pulled: 1200 });
  });
  test('send attachments before what names them', async () => {
    const one = phone(ONE);
    const sent: string[] = [];
    const photo = await one.attach(JOB, Uint8Array.of(1, 2, 3));
    await one.append(JOB, 'photo-taken', { photo, type: 'image/jpeg' });
    const watched: Transport = {
      ...server,
      push: (...all) => {
        sent.push('entries');
        return server.push(...all);
      },
      putAttachment: async (_job, hash) => {
        sent.push(hash);
        return { kind: 'answered', value: true };
      },
    };
    await sync(one, watched);
    await sync(one, watched);
    expect(sent).toEqual([photo, 'entries']);
  });
});

describe('what goes wrong with devices and servers', () => {
  test('a copied phone: both stories are kept, and the fold shows the fork', async () => {
    const shelf = memoryShelf();
    const one = phone(ONE, shelf);
    await note(one, 'before');
    const copy = phone(ONE, memoryShelf(shelf.copy()));
    await note(one, 'mine');
    await note(copy, 'copied');
    for (const device of [one, copy, one, copy]) expect((await sync(device)).stopped).toBe(undefined);
    expect((await texts(one)).sort()).toEqual(['before', 'copied', 'mine']);
    const fold = openFold();
    for (const entry of await copy.entries(JOB)) fold.add(entry);
    expect(fold.nonconformances().map(({ notice }) => notice?.code)).toContain('device-forked');
  });
  test('a phone set back to yesterday goes on, and what it had written since is not lost', async () => {
    const shelf = memoryShelf();
    const one = phone(ONE, shelf);
    await note(one, 'monday');
    await sync(one);
    const yesterday = shelf.copy();
    await note(one, 'tuesday');
    await sync(one);
    const again = phone(ONE, memoryShelf(yesterday));
    await note(again, 'wednesday');
    await sync(again);
    expect((await texts(again)).sort()).toEqual(['monday', 'tuesday', 'wednesday']);
  });
  test('a server set back is noticed; starting over brings back what it had lost', async () => {
    const one = phone(ONE);
    for (const text of ['a', 'b', 'c']) await note(one, text);
    await sync(one);
    const [, older] = await newServer();
    const noticed = await sync(one, older);
    expect(noticed.stopped?.why).toBe('log does not fit');
    expect(codes(noticed)).toEqual(['log-shorter-than-seen']);
    await startOver(one, JOB);
    expect(await sync(one, older)).toEqual({ pushed: 3, pulled: 3 });
    expect(await one.shelf.scan(`${JOB}/evidence/`)).toHaveLength(1);
  });
  test('a gap at the server is filled by the device without asking anybody', async () => {
    const one = phone(ONE);
    await note(one, 'a');
    await sync(one);
    const [fresh, older] = await newServer();
    await note(one, 'b');
    await sync(one, older);
    expect((await store.tail(JOB)).size).toBe(1);
    expect((await fresh.tail(JOB)).size).toBe(2);
  });
  test('a log that was rewritten, or signed by another, does not get in', async () => {
    const one = phone(ONE);
    await note(one, 'a');
    await sync(one);
    const [, other] = await newServer();
    const two = phone(TWO);
    await note(two, 'x');
    await sync(two, other);
    await note(two, 'y');
    expect(codes(await sync(two, directTransport(store, testKeys(98), 'skerrow', deviceKeys(TWO))))).toEqual(['note-not-signed']);
    expect(codes(await syncBook(one, JOB, { ...other, push: server.push }, LOG_KEY))).toEqual(['log-differs-from-seen']);
    expect(await texts(one)).toEqual(['a']);
  });
});

describe('acceptBatch()', () => {
  const writer = testWriter(1);
  const entries = [writer.write('note-written', { text: 'a' }), writer.write('note-written', { text: 'b' })];
  const head = writer.head();
  const push = async (heads: Parameters<typeof writeBatch>[0]['heads'], some = entries, job = JOB) => {
    const answer = await server.push(job, await writeBatch({ heads, entries: some.map(({ bytes }) => bytes) }));
    return answer.kind === 'refused' ? answer.notices.map(({ code }) => code) : [answer.kind];
  };
  test('takes what is whole', async () => {
    expect(await push([head])).toEqual(['answered']);
  });
  test('refuses an entry from another job, whoever signed for it', async () => {
    const elsewhere = testWriter(1, JOB.replace(/.$/, 'z'));
    const one = elsewhere.write('note-written', { text: 'replayed' });
    expect(await push([elsewhere.head()], [one])).toEqual(['entry-of-another-book', 'entry-of-another-book']);
    expect(await push([signHead({ job: JOB, device: writer.device, sequence: 0, hash: one.hash }, ONE)], [one])).toEqual([
      'entry-of-another-book',
    ]);
  });
  test('refuses a signature of another key, and an unsigned end', async () => {
    expect(await push([signHead({ job: JOB, device: writer.device, sequence: 1, hash: entries[1]!.hash }, TWO)])).toEqual([
      'head-not-signed',
    ]);
    expect(await push([signHead({ job: JOB, device: writer.device, sequence: 0, hash: entries[0]!.hash }, ONE)])).toEqual([
      'head-not-signed',
    ]);
  });
  test('refuses an entry whose predecessor is not here', async () => {
    expect(await push([head], entries.slice(1))).toEqual(['chain-has-a-gap']);
    expect((await store.tail(JOB)).size).toBe(0);
  });
  test('refuses what is no batch', async () => {
    const answer = await server.push(JOB, Uint8Array.of(1, 2, 3));
    expect(answer.kind === 'refused' && answer.notices.map(({ code }) => code)).toEqual(['batch-not-readable']);
  });
});
