import { randomBytes } from 'node:crypto';
import type { Outcome } from '@clampwright/core';
import {
  deviceIdOf,
  type Hash,
  type Kept,
  type KeyPair,
  keyPairOf,
  readEntry,
  readHead,
  type SignedHead,
  signHead,
} from '@clampwright/record';
import { once, type Store } from '@clampwright/store';
import { acceptBatch, type Device, openDevice, resumedShelf } from '@clampwright/sync';
import type { DeviceRecord } from './devices.ts';
import { SERVER } from './log-key.ts';
import { digestOf, newToken } from './tokens.ts';

/** The device in whose name papers are entered on the machine where the books lie. Its key lies with the records of the store; no token opens it. */
const DESK = 'desk';

async function deskKeys(store: Store, job: string, now: Date): Promise<KeyPair> {
  await store.access.add(SERVER, 'key', DESK, { secret: randomBytes(32).toString('hex') });
  const kept = (await store.access.get<{ readonly secret: string }>(SERVER, 'key', DESK))!;
  const keys = keyPairOf(new Uint8Array(Buffer.from(kept.secret, 'hex')));
  const device = deviceIdOf(keys.publicKey);
  const known = await store.access.get<DeviceRecord>(SERVER, 'device', device);
  const books = [...new Set([...(known?.books ?? []), job])];
  const record: DeviceRecord = known
    ? { ...known, books }
    : { key: Buffer.from(keys.publicKey).toString('hex'), name: DESK, token: digestOf(newToken()), books, enrolled: now.toISOString() };
  await store.access.put(SERVER, 'device', device, record);
  return keys;
}

/** Every entry of a book in the order of arrival. */
export async function entriesOf(store: Store, job: string): Promise<Kept[]> {
  const { size } = await store.tail(job);
  const found: Kept[] = [];
  for (let from = 0; from < size; from += PAGE)
    for (const { bytes } of await store.rows(job, from, Math.min(PAGE, size - from))) {
      const one = readEntry(bytes);
      if (one.ok) found.push(one.value);
    }
  return found;
}
const PAGE = 1000;
/** As many as one batch of a device may bring. */
const BATCH = 500;

/** Lets `work` write entries in the desk's name; they go through the same acceptance as those of any device. Returns how many. */
export async function atDesk(
  store: Store,
  job: string,
  now: () => Date,
  work: (desk: Device) => Promise<unknown>,
): Promise<Outcome<number>> {
  const keys = await deskKeys(store, job, now());
  const device = deviceIdOf(keys.publicKey);
  const shelf = resumedShelf(job, device, await entriesOf(store, job));
  const desk = openDevice({ shelf, keys, now, offsetMinutes: () => -now().getTimezoneOffset() });
  await work(desk);
  for (const [key, bytes] of await shelf.scan(`${job}/attachment/`)) {
    const hash = key.slice(key.lastIndexOf('/') + 1);
    if (!(await store.attachments.put(job, hash, once(bytes)))) throw new Error(`attachment ${hash} is not what its name says`);
  }
  const written = await desk.outbox(job);
  const signedOff = new Map<number, SignedHead>();
  for (const [, bytes] of await shelf.scan(`${job}/signed/`)) {
    const head = readHead(bytes);
    if (head.ok) signedOff.set(head.value.sequence, head.value);
  }
  for (let from = 0; from < written.length; from += BATCH) {
    const entries = written.slice(from, from + BATCH);
    const last = entries.at(-1)!;
    const head = signHead({ job, device, sequence: last.entry.sequence, hash: last.hash as Hash }, keys);
    const heads = entries.flatMap(({ entry }) => (entry.sequence === last.entry.sequence ? [] : (signedOff.get(entry.sequence) ?? [])));
    const taken = await acceptBatch(store, job, { heads: [...heads, head], entries }, keys.publicKey);
    if (!taken.ok) return taken;
  }
  return { ok: true, value: written.length };
}
