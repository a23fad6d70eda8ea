import { done, notice, refused } from '@clampwright/core';
import { type Account, accountOf, addAccount, allAccounts, hashPassword, putAccount, removeAccount, signedIn } from '../accounts.ts';
import type { Context } from '../context.ts';
import { removePasskeysOf } from '../passkeys.ts';
import { mayGive } from '../principal.ts';
import { notFound } from '../reply.ts';
import { beginSession, endSession, endSessionsOf, SESSION_COOKIE } from '../sessions.ts';
import type { Call, Handlers } from './handler.ts';

/** An account without its password. */
const shown = ({ name, roles, books, person: id, shared }: Account) => ({
  name,
  roles: [...roles],
  books: books === 'all' ? ('all' as const) : [...books],
  shared,
  ...(id === undefined ? {} : { person: id }),
});
const cookie = (token: string, { secure }: Context, seconds?: number) =>
  `${SESSION_COOKIE}=${token}; Path=/; HttpOnly; SameSite=Strict${secure ? '; Secure' : ''}${seconds === undefined ? '' : `; Max-Age=${seconds}`}`;
export const person = ({ who }: Call) => {
  if (who.kind !== 'person') throw new Error('the table of access lets nobody else in');
  return who;
};

/** Begins the session of somebody who has shown who it is. */
export async function enter(account: Account, { context, header }: Call) {
  header('Set-Cookie', cookie(await beginSession(context.store, account, context.now()), context));
  return done(shown(account));
}

export const sessionHandlers = {
  signIn: async ({ body: { name, password } }, call) => {
    const { store, signIns, signInsFrom } = call.context;
    const wait = Math.max(signIns.take(`name ${name.toLowerCase()}`), signInsFrom.take(call.from));
    if (wait > 0) return refused(notice('asked-too-often', { seconds: wait }));
    const account = await signedIn(store, name, password);
    return account ? enter(account, call) : refused(notice('sign-in-failed', {}));
  },
  whoAmI: async (_, call) => done(shown(person(call).account)),
  signOut: async (_, call) => {
    await endSession(call.context.store, person(call).session);
    call.header('Set-Cookie', cookie('', call.context, 0));
    return done(undefined);
  },
  changePassword: async ({ body: { old, password } }, call) => {
    const { account, session } = person(call);
    const { store, signIns } = call.context;
    const wait = signIns.take(`name ${account.name.toLowerCase()}`);
    if (wait > 0) return refused(notice('asked-too-often', { seconds: wait }));
    if (!(await signedIn(store, account.name, old))) return refused(notice('sign-in-failed', {}));
    await putAccount(store, { ...account, password: await hashPassword(password) });
    await endSessionsOf(store, account.name, session);
    return done(undefined);
  },
  addAccount: async ({ body: { name, password, roles, books, person: id, shared } }, { context: { store, yard }, who }) => {
    if (!mayGive(who, books, yard.id)) return notFound;
    const account: Account = {
      name,
      roles,
      books,
      password: await hashPassword(password),
      shared: shared ?? false,
      ...(id === undefined ? {} : { person: id }),
    };
    return (await addAccount(store, account)) ? done(shown(account)) : refused(notice('name-taken', { name }));
  },
  accounts: async (_, { context: { store } }) => done({ accounts: (await allAccounts(store)).map(shown) }),
  removeAccount: async ({ params: { name } }, { context: { store } }) => {
    const account = await accountOf(store, name);
    if (!account) return notFound;
    const planners = (await allAccounts(store)).filter(({ roles }) => roles.includes('planner'));
    if (account.roles.includes('planner') && planners.length === 1) return refused(notice('last-planner', {}));
    await removeAccount(store, name);
    await removePasskeysOf(store, account);
    await endSessionsOf(store, account.name);
    return done(undefined);
  },
} satisfies Partial<Handlers>;
