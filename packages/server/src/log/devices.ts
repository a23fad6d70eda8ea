import { deviceIdOf, isSignedBy, utf8 } from '@clampwright/record';
import type { Store } from '@clampwright/store';
import { SERVER } from './log-key.ts';
import { digestOf, isToken, newCode, newToken, readCode } from './tokens.ts';

/** An enrolled device: its key, and the digest of the token it shows with every request. */
export interface DeviceRecord {
  readonly key: string;
  readonly name: string;
  readonly token: string;
  /** books it takes part in */
  readonly books: readonly string[];
  readonly enrolled: string;
  readonly revoked?: string;
}

export const deviceRecord = (store: Store, device: string): Promise<DeviceRecord | undefined> => store.access.get(SERVER, 'device', device);
export const allDevices = (store: Store) => store.access.list<DeviceRecord>(SERVER, 'device');

interface Enrolment {
  readonly name: string;
  readonly books: readonly string[];
  readonly expires: number;
}
const TEN_MINUTES = 600_000;

export async function openEnrolment(
  store: Store,
  name: string,
  books: readonly string[],
  now: Date,
): Promise<{ code: string; expires: string }> {
  const code = newCode();
  const expires = now.getTime() + TEN_MINUTES;
  await store.access.put(SERVER, 'code', digestOf(readCode(code)), { name, books, expires } satisfies Enrolment);
  return { code, expires: new Date(expires).toISOString() };
}

/** Enrols the device that shows a code and signs it with its key; the code is used up, whatever comes of it. */
export async function enrolDevice(
  store: Store,
  asked: { readonly code: string; readonly key: string; readonly signature: string },
  now: Date,
): Promise<{ readonly device: string; readonly token: string; readonly record: DeviceRecord } | undefined> {
  const code = readCode(asked.code);
  const enrolment = await store.access.take<Enrolment>(SERVER, 'code', digestOf(code));
  const key = new Uint8Array(Buffer.from(asked.key, 'hex'));
  const signed = isSignedBy(utf8(`clampwright-enrol-1\n${asked.code}`), new Uint8Array(Buffer.from(asked.signature, 'hex')), key);
  if (!enrolment || enrolment.expires < now.getTime() || !signed) return undefined;
  const device = deviceIdOf(key);
  const token = `${device}.${newToken()}`;
  const record: DeviceRecord = {
    key: asked.key,
    name: enrolment.name,
    token: digestOf(token),
    books: enrolment.books,
    enrolled: now.toISOString(),
  };
  await store.access.put(SERVER, 'device', device, record);
  return { device, token, record };
}

/** The device whose token it is, unless it was revoked. */
export async function deviceOfToken(
  store: Store,
  token: string,
): Promise<{ readonly id: string; readonly record: DeviceRecord } | undefined> {
  const id = token.slice(0, Math.max(0, token.indexOf('.')));
  const record = id === '' ? undefined : await deviceRecord(store, id);
  return record && record.revoked === undefined && isToken(token, record.token) ? { id, record } : undefined;
}

export async function setDeviceBooks(store: Store, device: string, books: readonly string[]): Promise<boolean> {
  const record = await deviceRecord(store, device);
  if (!record) return false;
  await store.access.put(SERVER, 'device', device, { ...record, books } satisfies DeviceRecord);
  return true;
}

export async function revokeDevice(store: Store, device: string, now: Date): Promise<boolean> {
  const record = await deviceRecord(store, device);
  if (!record) return false;
  await store.access.put(SERVER, 'device', device, { ...record, revoked: now.toISOString() } satisfies DeviceRecord);
  return true;
}
