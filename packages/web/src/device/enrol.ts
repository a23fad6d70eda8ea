import type { Notice } from '@clampwright/core';
import { keyPairOf, sign, utf8 } from '@clampwright/record';
import { apiClient } from '@clampwright/sync';
import { type Database, type Identity, keep } from './database.ts';

const hex = (bytes: Uint8Array) => [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');

export type Enrolled =
  | { readonly ok: true; readonly identity: Identity }
  | { readonly ok: false; readonly notices: readonly Notice[] | 'unreachable' };

/** Makes this device's key and enrols it with a code from the planner. */
export async function enrol(db: Database, code: string, server = location.origin): Promise<Enrolled> {
  const keys = keyPairOf(crypto.getRandomValues(new Uint8Array(32)));
  const signature = hex(sign(utf8(`clampwright-enrol-1\n${code}`), keys));
  const answer = await apiClient({ server })('enrol', { body: { code, key: hex(keys.publicKey), signature } });
  if (answer.kind !== 'answered') return { ok: false, notices: answer.kind === 'refused' ? answer.notices : 'unreachable' };
  const identity: Identity = { secret: keys.secret, ...answer.value };
  await keep(db, 'identity', identity);
  return { ok: true, identity };
}
