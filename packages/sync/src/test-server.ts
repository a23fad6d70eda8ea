import { deviceIdOf, type KeyPair, type NoteKey, type Receipt, rootOf, signCheckpoint } from '@clampwright/record';
import { acceptBatch, type Log } from './accept.ts';
import { readBatch } from './batch.ts';
import { type Row, writePage } from './page.ts';
import type { Answer, Transport } from './transport.ts';

/** What the server's side reads of the log, besides what it appends. */
export interface ReadableLog extends Log {
  readonly rows: (job: string, from: number, limit: number) => Promise<readonly Row[]>;
  readonly tail: (job: string) => Promise<Parameters<typeof rootOf>[0]>;
}

/** A server without HTTP around it: the shipped acceptance and pages, over a log. For tests and simulated days. */
export function directTransport(log: ReadableLog, keys: KeyPair, name: string, devices: ReadonlyMap<string, Uint8Array>): Transport {
  return {
    push: async (job, bytes): Promise<Answer<readonly Receipt[]>> => {
      const batch = await readBatch(bytes);
      if (!batch.ok) return { kind: 'refused', notices: batch.notices };
      const publicKey = devices.get(batch.value.heads[0]!.device);
      if (!publicKey) return { kind: 'refused', notices: [] };
      const taken = await acceptBatch(log, job, batch.value, publicKey);
      return taken.ok ? { kind: 'answered', value: taken.value } : { kind: 'refused', notices: taken.notices };
    },
    pull: async (job, from, limit) => {
      const tail = await log.tail(job);
      const rows = await log.rows(job, from, Math.min(limit, Math.max(0, tail.size - from)));
      return {
        kind: 'answered',
        value: writePage({ checkpoint: signCheckpoint({ job, size: tail.size, root: rootOf(tail) }, name, keys), rows }),
      };
    },
    putAttachment: async () => ({ kind: 'answered', value: true }),
  };
}

export const noteKeyOf = (keys: KeyPair, name: string): NoteKey => ({ name, publicKey: keys.publicKey });
export const deviceKeys = (...keys: readonly KeyPair[]): ReadonlyMap<string, Uint8Array> =>
  new Map(keys.map(({ publicKey }) => [deviceIdOf(publicKey), publicKey]));
