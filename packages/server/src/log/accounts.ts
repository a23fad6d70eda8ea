import type { Store } from '@clampwright/store';
import { hash, verify } from '@node-rs/argon2';
import type { Role } from './access-table.ts';
import { SERVER } from './log-key.ts';

export interface Account {
  readonly name: string;
  readonly password: string;
  readonly roles: readonly Role[];
  readonly books: readonly string[] | 'all';
  readonly person?: string;
  /** on a device of several people: signed out after a short idle time */
  readonly shared: boolean;
}

/** argon2id with 19 MiB, two passes, one lane: common guidance of 2023, from memory; about 10 ms here. */
const COST = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

export const hashPassword = (password: string): Promise<string> => hash(password, COST);

let nobody: Promise<string> | undefined;

/** The account whose name and password fit. A name that does not exist takes as long as a password that does not fit. */
export async function signedIn(store: Store, name: string, password: string): Promise<Account | undefined> {
  const account = await accountOf(store, name);
  nobody ??= hashPassword('nobody has this password');
  const fits = await verify(account?.password ?? (await nobody), password);
  return fits ? account : undefined;
}

export const accountOf = (store: Store, name: string): Promise<Account | undefined> => store.access.get(SERVER, 'account', idOfName(name));
/** False where the name is taken. */
export const addAccount = (store: Store, account: Account): Promise<boolean> =>
  store.access.add(SERVER, 'account', idOfName(account.name), account);
export const putAccount = (store: Store, account: Account): Promise<void> =>
  store.access.put(SERVER, 'account', idOfName(account.name), account);
export const removeAccount = (store: Store, name: string): Promise<Account | undefined> =>
  store.access.take(SERVER, 'account', idOfName(name));
export const allAccounts = async (store: Store): Promise<readonly Account[]> =>
  (await store.access.list<Account>(SERVER, 'account')).map(({ value }) => value);

/** Names that read alike are one. */
const idOfName = (name: string) => name.normalize('NFKC').toLowerCase();
