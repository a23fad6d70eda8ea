import { ENGINE } from '@clampwright/core';
import type { PaperOptions, ReportSource } from '@clampwright/papers/out';
import { type HandoverSource, writeHandover } from '@clampwright/record';
import { type BookCheck, checkBook, handoverSource, type Store } from '@clampwright/store';
import { type DeviceRecord, deviceRecord } from './devices.ts';
import { findLogKey, type LogKey } from './log-key.ts';

/** Above this a report is asked for on its own: it holds every entry in memory. */
export const MOST_REPORTED = 100_000;

export interface HandoverOptions {
  readonly made: Date;
  /** a report of the reader's own, or none; without, the report is made from the very entries of the file */
  readonly report?: Uint8Array | 'none';
  readonly paper?: Partial<Pick<PaperOptions, 'organisation' | 'progress' | 'languages'>>;
}

/** The handover file of a job as it stands, with its report; undefined where no server has ever opened the store. */
export async function makeHandover(
  store: Store,
  job: string,
  { made, report, paper }: HandoverOptions,
): Promise<AsyncGenerator<Uint8Array> | undefined> {
  const log = await findLogKey(store);
  if (!log) return undefined;
  const source = await handoverSource(store, job, { made, keyOf: keyOf(store) });
  const wanted = report ?? (source.tail.size > MOST_REPORTED ? 'none' : await reportOf(source, log, { made, ...paper }));
  return writeHandover(wanted === 'none' ? source : { ...source, report: wanted }, log);
}

/** What papers of a book are made from, read whole; undefined where no server has ever opened the store. */
export async function reportSource(store: Store, job: string, made = new Date()): Promise<ReportSource | undefined> {
  const log = await findLogKey(store);
  if (!log) return undefined;
  const { reportSourceOf } = await import('@clampwright/papers/out');
  return reportSourceOf(await handoverSource(store, job, { made, keyOf: keyOf(store) }), log, ENGINE);
}

/** The report of a job as it stands; undefined where no server has ever opened the store. */
export async function makeReport(store: Store, job: string, { made, paper }: HandoverOptions): Promise<Uint8Array | undefined> {
  const source = await reportSource(store, job, made);
  return source && setReport(source, { made, ...paper });
}

/** The typesetter is loaded when it is called for: a server that only takes entries starts without it. */
async function setReport(source: ReportSource, options: Omit<PaperOptions, 'letters'>): Promise<Uint8Array> {
  const [{ reportPdf }, { installedLetters }] = await Promise.all([
    import('@clampwright/papers/out'),
    import('@clampwright/papers/letters'),
  ]);
  return reportPdf(source, { ...options, letters: installedLetters() });
}

async function reportOf(source: HandoverSource, log: LogKey, options: Omit<PaperOptions, 'letters'>): Promise<Uint8Array> {
  const { reportSourceOf } = await import('@clampwright/papers/out');
  return setReport(await reportSourceOf(source, log, ENGINE), options);
}

/** Reads a whole book again, with the keys that this store knows. */
export async function auditBook(store: Store, job: string): Promise<BookCheck> {
  const log = await findLogKey(store);
  return checkBook(store, job, { device: keyOf(store), ...(log ? { log: log.note } : {}) });
}

const keyOf = (store: Store) => async (device: string) => keyBytes(await deviceRecord(store, device));

const keyBytes = (device: DeviceRecord | undefined) => device && new Uint8Array(Buffer.from(device.key, 'hex'));
