import { writeHandover } from '@clampwright/record';
import { handoverSource, type Store } from '@clampwright/store';
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
  const keyOf = async (device: string) => keyBytes(await deviceRecord(store, device));
  return writeHandover(await handoverSource(store, job, { made, keyOf, ...(report ? { report } : {}) }), log);
}

const keyBytes = (device: DeviceRecord | undefined) => device && new Uint8Array(Buffer.from(device.key, 'hex'));
