import type { Store } from '@clampwright/store';
import type { Who } from './access-table.ts';
import type { Account } from './accounts.ts';
import { type DeviceRecord, deviceOfToken } from './devices.ts';
import { SESSION_COOKIE, sessionAccount } from './sessions.ts';

/** Who is asking. */
export type Principal =
  | { readonly kind: 'anyone' }
  | { readonly kind: 'person'; readonly account: Account; readonly session: string }
  | { readonly kind: 'device'; readonly id: string; readonly record: DeviceRecord };

const cookieOf = (header: string | null): string | undefined =>
  header
    ?.split(/;\s*/)
    .find((one) => one.startsWith(`${SESSION_COOKIE}=`))
    ?.slice(SESSION_COOKIE.length + 1);

export async function principalOf(store: Store, headers: Headers, now: Date): Promise<Principal> {
  const bearer = /^Bearer (\S+)$/.exec(headers.get('authorization') ?? '')?.[1];
  const device = bearer === undefined ? undefined : await deviceOfToken(store, bearer);
  if (device) return { kind: 'device', ...device };
  const session = cookieOf(headers.get('cookie'));
  const account = session === undefined ? undefined : await sessionAccount(store, session, now);
  return account && session !== undefined ? { kind: 'person', account, session } : { kind: 'anyone' };
}

export function isOneOf(principal: Principal, who: readonly Who[]): boolean {
  if (who.includes('anyone')) return true;
  if (principal.kind === 'device') return who.includes('device');
  return principal.kind === 'person' && principal.account.roles.some((role) => who.includes(role));
}

/** May this one know of the book at all? The yard's own book is everybody's who works for the yard. */
export function knowsBook(principal: Principal, job: string, yard: string): boolean {
  if (principal.kind === 'anyone') return false;
  if (principal.kind === 'device') return job === yard || principal.record.books.includes(job);
  const { books, roles } = principal.account;
  return books === 'all' || books.includes(job) || (job === yard && roles.some((role) => role !== 'client'));
}

/** May this one let others into these books? Nobody gives what they do not have. */
export function mayGive(principal: Principal, books: readonly string[] | 'all', yard: string): boolean {
  if (books === 'all') return principal.kind === 'person' && principal.account.books === 'all';
  return books.every((job) => knowsBook(principal, job, yard));
}
