import { writeHandover } from '@clampwright/record';
import { type BookCheck, checkBook, handoverSource, type Store } from '@clampwright/store';
import { type DeviceRecord, deviceRecord } from './devices.ts';
import { findLogKey } from './log-key.ts';

/** The handover file of a job as it stands; undefined where no server has ever opened the store. */
export async function makeHandover(
  store: Store,
  job: string,
  made: Date,
  report?: Uint8Array,
): Promise<AsyncGenerator<Uint8Array> | undefined> {
  const log = await findLogKey(store);
  if (!log) return undefined;
  return writeHandover(await handoverSource(store, job, { made, keyOf: keyOf(store), ...(report ? { report } : {}) }), log);
}

/** Reads a whole book again, with the keys that this store knows. */
export async function auditBook(store: Store, job: string): Promise<BookCheck> {
  const log = await findLogKey(store);
  return checkBook(store, job, { device: keyOf(store), ...(log ? { log: log.note } : {}) });
}

const keyOf = (store: Store) => async (device: string) => keyBytes(await deviceRecord(store, device));

const keyBytes = (device: DeviceRecord | undefined) => device && new Uint8Array(Buffer.from(device.key, 'hex'));
