import type { Kept } from './envelope.ts';
import { localDate } from './envelope.ts';
import type { EntryKind, Told } from './kind.ts';
import { KINDS, type KindName } from './kinds/index.ts';

export const kindOf = (name: string): EntryKind<unknown> | undefined =>
  Object.hasOwn(KINDS, name) ? (KINDS[name as KindName] as EntryKind<unknown>) : undefined;

/** What a kept entry tells, where this version knows its kind and the body is as described. */
export function understand({ hash, entry }: Kept): { readonly kind: EntryKind<unknown>; readonly told: Told } | undefined {
  const kind = kindOf(entry.kind);
  if (!kind || kind.version !== entry.version) return undefined;
  if (!kind.body.safeParse(entry.body).success) return undefined;
  // what was read is as described: it needs no second copy
  return { kind, told: { hash, entry, body: entry.body, on: entry.paper?.done ?? localDate(entry) } };
}

/** Does the device sign its chain head at once when it writes one of these? */
export const isSignOff = (kind: KindName): boolean => kindOf(kind)?.signOff === true;
