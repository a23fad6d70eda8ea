import type { Envelope, Kept } from './envelope.ts';
import { localDate } from './envelope.ts';
import type { EntryKind, Told } from './kind.ts';
import { KINDS, type KindName } from './kinds/index.ts';

export const kindOf = (name: string): EntryKind<unknown> | undefined =>
  Object.hasOwn(KINDS, name) ? (KINDS[name as KindName] as EntryKind<unknown>) : undefined;

/** The kind of an entry, where this version knows it and the body is as described. */
export function readableKind({ kind: name, version, body }: Pick<Envelope, 'kind' | 'version' | 'body'>): EntryKind<unknown> | undefined {
  const kind = kindOf(name);
  if (!kind || version > kind.version || version < (kind.since ?? kind.version)) return undefined;
  return kind.body.safeParse(body).success ? kind : undefined;
}

/** What a kept entry tells, where this version can read it. */
export function understand({ hash, entry }: Kept): { readonly kind: EntryKind<unknown>; readonly told: Told } | undefined {
  const kind = readableKind(entry);
  // what was read is as described: it needs no second copy
  return kind && { kind, told: { hash, entry, body: entry.body, on: entry.paper?.done ?? localDate(entry) } };
}

/** Does the device sign its chain head at once when it writes one of these? */
export const isSignOff = (kind: KindName): boolean => kindOf(kind)?.signOff === true;
