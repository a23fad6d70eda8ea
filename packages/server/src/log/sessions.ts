import type { Store } from '@clampwright/store';
import { type Account, accountOf } from './accounts.ts';
import { SERVER } from './log-key.ts';
import { digestOf, newToken } from './tokens.ts';

interface Session {
  readonly account: string;
  readonly begun: number;
  readonly seen: number;
}

const MINUTE = 60_000;
/** a device of one person, a device of several, and the longest a session lasts */
const IDLE = { own: 12 * 60 * MINUTE, shared: 10 * MINUTE };
const LONGEST = 7 * 24 * 60 * MINUTE;
export const SESSION_COOKIE = 'clampwright_session';

export async function beginSession(store: Store, { name }: Account, now: Date): Promise<string> {
  const token = newToken();
  await store.access.put(SERVER, 'session', digestOf(token), {
    account: name,
    begun: now.getTime(),
    seen: now.getTime(),
  } satisfies Session);
  return token;
}

/** Whose session it is, if it has not run out. */
export async function sessionAccount(store: Store, token: string, now: Date): Promise<Account | undefined> {
  const id = digestOf(token);
  const session = await store.access.get<Session>(SERVER, 'session', id);
  const account = session && (await accountOf(store, session.account));
  if (!account) return undefined;
  const idle = account.shared ? IDLE.shared : IDLE.own;
  if (now.getTime() - session.seen > idle || now.getTime() - session.begun > LONGEST) {
    await store.access.take(SERVER, 'session', id);
    return undefined;
  }
  // one write a minute is enough to know that it is not idle
  if (now.getTime() - session.seen > MINUTE) await store.access.put(SERVER, 'session', id, { ...session, seen: now.getTime() });
  return account;
}

export const endSession = async (store: Store, token: string): Promise<void> => {
  await store.access.take(SERVER, 'session', digestOf(token));
};

export async function endSessionsOf(store: Store, name: string, except?: string): Promise<void> {
  for (const { id, value } of await store.access.list<Session>(SERVER, 'session'))
    if (value.account === name && id !== (except && digestOf(except))) await store.access.take(SERVER, 'session', id);
}
