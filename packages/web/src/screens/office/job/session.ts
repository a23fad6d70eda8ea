import type { Notice } from '@clampwright/core';
import { type Answer, type Answered, apiClient } from '@clampwright/sync';
import { useEffect } from 'react';
import { useWatched, watched } from '../../../job/store.ts';

/** The server, as a signed-in person asks it: by the cookie of the session. */
export const server = apiClient({ server: location.origin });

export type Account = Answered<'whoAmI'>;
/** What stands at this address: a yard's server, none of them, or nothing that answers now. */
type Yard = 'here' | 'none' | 'silent';
export type Session =
  | { readonly kind: 'asking' }
  | { readonly kind: 'out'; readonly yard: Yard }
  | { readonly kind: 'in'; readonly account: Account };

/** One for all pages of the office: asked for once, when the first of them is opened. */
const session = watched<Session>({ kind: 'asking' });
let asked = false;
const setAccount = (account: Account | undefined) => session.set(account ? { kind: 'in', account } : { kind: 'out', yard: 'here' });

export function useSession(): { readonly session: Session; readonly setAccount: (account: Account | undefined) => void } {
  useEffect(() => {
    if (asked) return;
    asked = true;
    void server('whoAmI', {}).then((answer) => {
      if (answer.kind === 'answered') setAccount(answer.value);
      else session.set({ kind: 'out', yard: yardOf(answer) });
    });
  }, []);
  return { session: useWatched(session), setAccount };
}

/** A yard that refuses says why; where only pages are served (`clampwright show`), nobody does. */
const yardOf = (answer: Answer<unknown>): Yard =>
  answer.kind === 'unreachable' ? 'silent' : faultOf(answer)?.length === 0 ? 'none' : 'here';

/** What went wrong, or nothing: for a line under a form. */
export type Fault = readonly Notice[] | 'unreachable' | undefined;
export const faultOf = (answer: Answer<unknown>): Fault =>
  answer.kind === 'answered' ? undefined : answer.kind === 'refused' ? answer.notices : 'unreachable';
