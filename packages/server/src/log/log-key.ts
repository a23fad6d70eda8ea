import { randomBytes } from 'node:crypto';
import { idOf, type KeyPair, keyPairOf, type NoteKey } from '@clampwright/record';
import type { Store } from '@clampwright/store';

/** Under which "job" the server keeps what belongs to no book. */
export const SERVER = 'server';

export interface LogKey {
  readonly name: string;
  readonly keys: KeyPair;
  readonly note: NoteKey;
}

interface Kept {
  readonly name: string;
  readonly secret: string;
}

/** The key that signs checkpoints: lies with the records of the store, so that several servers over one database sign alike. */
export async function findLogKey(store: Store): Promise<LogKey | undefined> {
  const kept = await store.access.get<Kept>(SERVER, 'key', 'log');
  if (!kept) return undefined;
  const keys = keyPairOf(new Uint8Array(Buffer.from(kept.secret, 'hex')));
  return { name: kept.name, keys, note: { name: kept.name, publicKey: keys.publicKey } };
}

export async function logKey(store: Store, name = 'clampwright-log'): Promise<LogKey> {
  await store.access.add(SERVER, 'key', 'log', { name, secret: randomBytes(32).toString('hex') } satisfies Kept);
  return (await findLogKey(store))!;
}

export interface Yard {
  readonly id: string;
  readonly name: string;
}

/** The yard whose books lie in this store, where there is one yet. */
export const findYard = (store: Store): Promise<Yard | undefined> => store.access.get<Yard>(SERVER, 'yard', 'yard');

/** The yard whose books lie in this store; made when the first server opens it. */
export async function yardOf(store: Store, name = 'yard'): Promise<Yard> {
  await store.access.add(SERVER, 'yard', 'yard', { id: idOf('yard', randomBytes(16)), name } satisfies Yard);
  return (await findYard(store))!;
}
