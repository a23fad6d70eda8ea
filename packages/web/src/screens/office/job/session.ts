import type { Notice } from '@clampwright/core';
import { type Answer, type Answered, apiClient } from '@clampwright/sync';
import { useEffect, useState } from 'react';

/** The server, as a signed-in person asks it: by the cookie of the session. */
export const server = apiClient({ server: location.origin });

export type Account = Answered<'whoAmI'>;
export type Session = { readonly kind: 'asking' } | { readonly kind: 'out' } | { readonly kind: 'in'; readonly account: Account };

export function useSession(): { readonly session: Session; readonly setAccount: (account: Account | undefined) => void } {
  const [session, setSession] = useState<Session>({ kind: 'asking' });
  useEffect(() => {
    void server('whoAmI', {}).then((answer) =>
      setSession(answer.kind === 'answered' ? { kind: 'in', account: answer.value } : { kind: 'out' }),
    );
  }, []);
  return { session, setAccount: (account) => setSession(account ? { kind: 'in', account } : { kind: 'out' }) };
}

/** What went wrong, or nothing: for a line under a form. */
export type Fault = readonly Notice[] | 'unreachable' | undefined;
export const faultOf = (answer: Answer<unknown>): Fault =>
  answer.kind === 'answered' ? undefined : answer.kind === 'refused' ? answer.notices : 'unreachable';
