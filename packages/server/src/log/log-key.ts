import { type KeyPair, keyPairOf, type NoteKey } from '@clampwright/record';
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
