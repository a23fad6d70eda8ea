import type { Store } from '@clampwright/store';
import {
  type AuthenticationResponseJSON,
  generateAuthenticationOptions,
  generateRegistrationOptions,
  type RegistrationResponseJSON,
  verifyAuthenticationResponse,
  verifyRegistrationResponse,
} from '@simplewebauthn/server';
import { type Account, accountOf } from './accounts.ts';
import { SERVER } from './log-key.ts';
import { digestOf } from './tokens.ts';

/** A passkey (W3C Web Authentication, level 3): the public half of a key that a person's device keeps. */
export interface Passkey {
  readonly account: string;
  /** what its owner calls it */
  readonly label: string;
  readonly added: string;
  readonly publicKey: string;
  /** how often it was used, by its own count: one that falls was copied */
  readonly counter: number;
  readonly transports: readonly string[];
}

/** Where the question came from: a passkey is bound to the host it was made at. */
export interface Site {
  readonly origin: string;
  readonly host: string;
}
export const siteOf = ({ url }: Request): Site => {
  const { origin, hostname } = new URL(url);
  return { origin, host: hostname };
};

const FIVE_MINUTES = 300_000;
interface Challenge {
  /** account that adds a passkey; absent when signing in */
  readonly account?: string;
  readonly expires: number;
}

async function keep(store: Store, challenge: string, now: Date, account?: string): Promise<void> {
  // those that nobody answered in time: anyone may ask for one
  for (const { id, value } of await store.access.list<Challenge>(SERVER, 'challenge'))
    if (value.expires <= now.getTime()) await store.access.take(SERVER, 'challenge', id);
  await store.access.put(SERVER, 'challenge', digestOf(challenge), {
    expires: now.getTime() + FIVE_MINUTES,
    ...(account === undefined ? {} : { account }),
  } satisfies Challenge);
}

/** A challenge is answered once, in time, by whom it was given to. */
const isOurs = (store: Store, now: Date, account?: string) => async (challenge: string) => {
  const kept = await store.access.take<Challenge>(SERVER, 'challenge', digestOf(challenge));
  return kept !== undefined && kept.account === account && kept.expires > now.getTime();
};

export async function passkeysOf(store: Store, { name }: Account): Promise<readonly { readonly id: string; readonly value: Passkey }[]> {
  return (await store.access.list<Passkey>(SERVER, 'passkey')).filter(({ value }) => value.account === name);
}

/** What a browser needs to make a passkey for the account. */
export async function offerPasskey(store: Store, account: Account, { host }: Site, now: Date) {
  const known = await passkeysOf(store, account);
  const options = await generateRegistrationOptions({
    rpName: 'Clampwright',
    rpID: host,
    userName: account.name,
    excludeCredentials: known.map(({ id, value }) => ({ id, transports: [...value.transports] })),
    authenticatorSelection: { residentKey: 'required', userVerification: 'required' },
  });
  await keep(store, options.challenge, now, account.name);
  return options;
}

/** Keeps the passkey that a browser made; undefined where its answer does not fit what was offered. */
export async function keepPasskey(
  store: Store,
  account: Account,
  { label, response }: { readonly label: string; readonly response: unknown },
  { origin, host }: Site,
  now: Date,
): Promise<{ readonly id: string; readonly value: Passkey } | undefined> {
  const made = await verified(() =>
    verifyRegistrationResponse({
      response: response as RegistrationResponseJSON,
      expectedChallenge: isOurs(store, now, account.name),
      expectedOrigin: origin,
      expectedRPID: host,
    }),
  );
  if (!made?.verified) return undefined;
  const { id, publicKey, counter, transports = [] } = made.registrationInfo.credential;
  const value: Passkey = {
    account: account.name,
    label,
    added: now.toISOString(),
    publicKey: Buffer.from(publicKey).toString('base64'),
    counter,
    transports,
  };
  return (await store.access.add(SERVER, 'passkey', id, value)) ? { id, value } : undefined;
}

/** What a browser needs to show any passkey it has for this host: no name is asked for. */
export async function askPasskey(store: Store, { host }: Site, now: Date) {
  const options = await generateAuthenticationOptions({ rpID: host, userVerification: 'required' });
  await keep(store, options.challenge, now);
  return options;
}

/** The account whose passkey it is; undefined where the answer does not fit. */
export async function passkeyAccount(store: Store, response: unknown, { origin, host }: Site, now: Date): Promise<Account | undefined> {
  const { id } = response as AuthenticationResponseJSON;
  const passkey = typeof id === 'string' ? await store.access.get<Passkey>(SERVER, 'passkey', id) : undefined;
  const account = passkey && (await accountOf(store, passkey.account));
  if (!passkey || !account) return undefined;
  const shown = await verified(() =>
    verifyAuthenticationResponse({
      response: response as AuthenticationResponseJSON,
      expectedChallenge: isOurs(store, now),
      expectedOrigin: origin,
      expectedRPID: host,
      credential: { id, publicKey: new Uint8Array(Buffer.from(passkey.publicKey, 'base64')), counter: passkey.counter },
    }),
  );
  if (!shown?.verified) return undefined;
  await store.access.put(SERVER, 'passkey', id, { ...passkey, counter: shown.authenticationInfo.newCounter } satisfies Passkey);
  return account;
}

export async function removePasskey(store: Store, account: Account, id: string): Promise<boolean> {
  const known = await passkeysOf(store, account);
  return known.some((one) => one.id === id) && (await store.access.take(SERVER, 'passkey', id)) !== undefined;
}

export async function removePasskeysOf(store: Store, account: Account): Promise<void> {
  for (const { id } of await passkeysOf(store, account)) await store.access.take(SERVER, 'passkey', id);
}

/** The library throws at an answer that does not fit. */
async function verified<T>(check: () => Promise<T>): Promise<T | undefined> {
  try {
    return await check();
  } catch {
    return undefined;
  }
}
