import { done, notice, refused } from '@clampwright/core';
import { askPasskey, keepPasskey, offerPasskey, type Passkey, passkeyAccount, passkeysOf, removePasskey, siteOf } from '../passkeys.ts';
import { notFound } from '../reply.ts';
import type { Handlers } from './handler.ts';
import { enter, person } from './session.ts';

const shown = ({ id, value: { label, added } }: { readonly id: string; readonly value: Passkey }) => ({ passkey: id, label, added });

export const passkeyHandlers = {
  offerPasskey: async (_, call) =>
    done({ ...(await offerPasskey(call.context.store, person(call).account, siteOf(call.request), call.context.now())) }),
  addPasskey: async ({ body }, call) => {
    const { store, now } = call.context;
    const kept = await keepPasskey(store, person(call).account, body, siteOf(call.request), now());
    return kept ? done(shown(kept)) : refused(notice('passkey-not-taken', {}));
  },
  passkeys: async (_, call) => done({ passkeys: (await passkeysOf(call.context.store, person(call).account)).map(shown) }),
  removePasskey: async ({ params: { passkey } }, call) =>
    (await removePasskey(call.context.store, person(call).account, passkey)) ? done(undefined) : notFound,
  askPasskey: async (_, { context: { store, now, signInsFrom }, from, request }) => {
    const wait = signInsFrom.take(from);
    if (wait > 0) return refused(notice('asked-too-often', { seconds: wait }));
    return done({ ...(await askPasskey(store, siteOf(request), now())) });
  },
  signInWithPasskey: async ({ body: { response } }, call) => {
    const { store, signInsFrom, now } = call.context;
    const wait = signInsFrom.take(call.from);
    if (wait > 0) return refused(notice('asked-too-often', { seconds: wait }));
    const account = await passkeyAccount(store, response, siteOf(call.request), now());
    return account ? enter(account, call) : refused(notice('passkey-not-known', {}));
  },
} satisfies Partial<Handlers>;
